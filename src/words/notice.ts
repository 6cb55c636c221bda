/** The notice of results that workers read, in plain words: 29 CFR 1926.62(d)(8). English and Spanish. */
import type { Verdict } from '#findings/standing.ts';
import { formatDay, formatInWorking } from './quantity.ts';

type Which = 'actionLevel' | 'pel';
type NoticeVerdict = Verdict | 'notKnown';

export const en = {
  short: 'Notice of results',
  title: 'Notice: lead in the air at work',
  lead: (firm: string, day: string) =>
    `${firm} measured the air that workers breathed in on ${formatDay(day, 'en', 'weekday')}.`,
  leadReported: (firm: string, day: string) =>
    `${firm} was given a measurement of the air that workers breathed in on ${formatDay(day, 'en', 'weekday')}.`,
  documentTitle: (site: string, day: string, revision: string) =>
    `Notice of results, ${site}, ${day}, revision ${revision}`,
  average: 'Lead in the air, average over 8 hours',
  averageNone: 'No figure yet',
  averageText:
    'This is the air itself, as if nobody wore a respirator. µg/m³ means micrograms (millionths of a gram) of lead in each cubic meter of air.',
  atLeast: '“At least” means: so much is certain, and it may be more.',
  lessThan:
    '“Less than” means: the laboratory could not see any lower. It may be anything from none up to this figure.',
  between: '“Between” means: it lies somewhere from the first figure to the second.',
  owed: 'A part of the day has no result yet. A new notice follows when it comes.',
  standing: 'Where it stands',
  limitHead: 'Limit',
  verdictHead: 'This result',
  limitTextHead: 'What the limit is',
  limit: (which: Which, limit: number) =>
    `${which === 'pel' ? 'Permissible exposure limit (PEL)' : 'Action level'}, ${formatInWorking(limit, 'µg/m³')}`,
  limitText: {
    actionLevel: 'from here on the rule asks for more, such as measuring again and training',
    pel: 'the most that the rule allows as an average over 8 hours',
  },
  verdicts: {
    below: 'Below it',
    exactlyAt: 'Exactly at it',
    above: 'Above it',
    atOrAbove: 'At it or above it; how far above is not known',
    unresolved: 'Not settled: it may have been reached',
    atLeastBelow: 'Not settled: what is known is below it, and the rest is not known',
    notKnown: 'Not known yet',
  } satisfies Record<NoticeVerdict, string>,
  longDay: (hours: string, allowable: string, average: string | null) =>
    `The work day was ${hours} long. Over so long a day the average may reach no more than ${allowable}${average === null ? '.' : `; it was ${average}.`}`,
  pelHeading: 'At or above the limit',
  pelStatement: {
    was: (limit: number) =>
      `Exposure was at or above the permissible exposure limit of ${formatInWorking(limit, 'µg/m³')}, without regard to respirators.`,
    mayHaveBeen: (limit: number) =>
      `Exposure may have been at or above the permissible exposure limit of ${formatInWorking(limit, 'µg/m³')}, without regard to respirators. The measurement does not settle it.`,
  },
  corrective: 'What was done about it, or will be done, to bring it down',
  correctiveAlso: 'What was done about it, or will be done',
  correctiveIn: 'In the words of the firm, in English:',
  measured: 'What was measured',
  day: 'Day',
  site: 'Place',
  siteNone: 'not in this book',
  task: 'Work',
  samples: 'Samples',
  by: 'Measured by',
  respirator: 'Respirator worn',
  received: 'Results received',
  standsFor: 'Whom this result stands for',
  standsForText:
    'The measured worker carried the pump. The others did the same work on the same day, or are named in writing.',
  standsForOne: 'The worker carried the pump; the result is this worker’s own.',
  columns: {
    who: 'Worker',
    number: 'Worker’s number, or job and hours',
    what: 'How',
    employer: 'Firm',
    given: 'Received: initials and date',
  },
  carriedPump: 'carried the pump',
  sameWork: 'same work',
  ownFirm: 'this firm',
  writeHere: '______________',
  next: 'What comes next',
  nextText: {
    none: () => 'No further measurement has a date now. If the work changes, it is measured again.',
    byDate: (on: string | null) =>
      on === null ? 'A further measurement is due.' : `The next measurement is due by ${formatDay(on, 'en')}.`,
    beforeNextTime: (_on: string | null) =>
      'The next measurement is due before or on the first day this work is done again.',
    now: (_on: string | null) => 'A new measurement is due now.',
  },
  nextOpen: 'When the next measurement is due is not settled yet.',
  rights: 'Your rights',
  rightsLines: [
    'You may see the records of your exposure and get a copy. The first copy costs nothing. So may anyone whom you name in writing.',
    'If you cannot see them within 15 working days of asking, the firm must tell you within those days why, and when you will.',
    'When air is measured, you or someone who speaks for you may watch, have it explained, and write down or be given the results.',
  ],
  questions: 'Questions',
  askText: (who: string) => `Ask ${who}.`,
  askOpen: 'Ask: ____________________________________',
  posted: (places: string) => `Posted at: ${places}`,
  postedOpen: 'Posted at: ____________________________________',
  signFor: 'For the firm',
  signRead: 'Read aloud to, or handed to, those who are named above',
  notHeld:
    'A rule of this state may govern that is not held complete here. The figures stand; that rule decides what must be done.',
  basis: (document: string, paragraph: string) =>
    `Given under ${document}${paragraph === '' ? '' : `, paragraph ${paragraph}`}. The current text of the rule, and state and local rules, decide.`,
};

export type NoticeWords = typeof en;

export const es: NoticeWords = {
  short: 'Aviso de resultados',
  title: 'Aviso: plomo en el aire del trabajo',
  lead: (firm, day) => `${firm} midió el aire que respiraron los trabajadores el ${formatDay(day, 'es', 'weekday')}.`,
  leadReported: (firm, day) =>
    `${firm} recibió una medición del aire que respiraron los trabajadores el ${formatDay(day, 'es', 'weekday')}.`,
  documentTitle: (site, day, revision) => `Aviso de resultados, ${site}, ${day}, revisión ${revision}`,
  average: 'Plomo en el aire, promedio de 8 horas',
  averageNone: 'Todavía no hay cifra',
  averageText:
    'Es el aire mismo, como si nadie usara respirador. µg/m³ quiere decir microgramos (millonésimas de gramo) de plomo en cada metro cúbico de aire.',
  atLeast: '“Por lo menos” quiere decir: eso es seguro, y puede ser más.',
  lessThan:
    '“Menos de” quiere decir: el laboratorio no pudo ver menos. Puede ser cualquier cantidad, desde nada hasta esa cifra.',
  between: '“Entre” quiere decir: está en algún punto de la primera cifra a la segunda.',
  owed: 'Una parte del día todavía no tiene resultado. Cuando llegue, habrá un aviso nuevo.',
  standing: 'Cómo queda frente a los límites',
  limitHead: 'Límite',
  verdictHead: 'Este resultado',
  limitTextHead: 'Qué es el límite',
  limit: (which, limit) =>
    `${which === 'pel' ? 'Límite de exposición permisible (PEL)' : 'Nivel de acción'}, ${formatInWorking(limit, 'µg/m³')}`,
  limitText: {
    actionLevel: 'desde aquí la regla pide más, como medir otra vez y dar capacitación',
    pel: 'lo más que la regla permite como promedio de 8 horas',
  },
  verdicts: {
    below: 'Por debajo',
    exactlyAt: 'Exactamente en el límite',
    above: 'Por encima',
    atOrAbove: 'En el límite o por encima; no se sabe por cuánto',
    unresolved: 'No está claro: puede que se haya alcanzado',
    atLeastBelow: 'No está claro: lo que se sabe está por debajo, y lo demás no se sabe',
    notKnown: 'Todavía no se sabe',
  },
  longDay: (hours, allowable, average) =>
    `La jornada duró ${hours}. En una jornada tan larga el promedio no puede pasar de ${allowable}${average === null ? '.' : `; fue de ${average}.`}`,
  pelHeading: 'En el límite o por encima',
  pelStatement: {
    was: (limit) =>
      `La exposición estuvo en el límite de exposición permisible de ${formatInWorking(limit, 'µg/m³')} o por encima, sin tomar en cuenta los respiradores.`,
    mayHaveBeen: (limit) =>
      `La exposición pudo haber estado en el límite de exposición permisible de ${formatInWorking(limit, 'µg/m³')} o por encima, sin tomar en cuenta los respiradores. La medición no lo deja claro.`,
  },
  corrective: 'Qué se hizo o se hará para bajarla',
  correctiveAlso: 'Qué se hizo o se hará',
  correctiveIn: 'En las palabras de la empresa, en inglés:',
  measured: 'Qué se midió',
  day: 'Día',
  site: 'Lugar',
  siteNone: 'no está en este libro',
  task: 'Trabajo',
  samples: 'Muestras',
  by: 'Midió',
  respirator: 'Respirador usado',
  received: 'Resultados recibidos',
  standsFor: 'Para quién vale este resultado',
  standsForText:
    'El trabajador medido llevó la bomba. Los demás hicieron el mismo trabajo el mismo día, o están nombrados por escrito.',
  standsForOne: 'El trabajador llevó la bomba; el resultado es el suyo.',
  columns: {
    who: 'Trabajador',
    number: 'Número del trabajador, o puesto y horas',
    what: 'Cómo',
    employer: 'Empresa',
    given: 'Recibido: iniciales y fecha',
  },
  carriedPump: 'llevó la bomba',
  sameWork: 'mismo trabajo',
  ownFirm: 'esta empresa',
  writeHere: '______________',
  next: 'Qué sigue',
  nextText: {
    none: () => 'Por ahora no hay fecha para otra medición. Si el trabajo cambia, se mide otra vez.',
    byDate: (on) =>
      on === null ? 'Falta otra medición.' : `La próxima medición debe hacerse a más tardar el ${formatDay(on, 'es')}.`,
    beforeNextTime: () =>
      'La próxima medición debe hacerse antes del primer día en que se vuelva a hacer este trabajo, o ese mismo día.',
    now: () => 'Hay que medir otra vez ahora.',
  },
  nextOpen: 'Todavía no está claro cuándo toca la próxima medición.',
  rights: 'Sus derechos',
  rightsLines: [
    'Usted puede ver los registros de su exposición y recibir una copia. La primera copia no cuesta nada. También puede hacerlo quien usted nombre por escrito.',
    'Si no los puede ver en los 15 días hábiles después de pedirlos, la empresa tiene que decirle dentro de ese plazo por qué, y cuándo podrá.',
    'Cuando se mide el aire, usted o alguien que lo represente puede mirar, pedir que se lo expliquen, y anotar o recibir los resultados.',
  ],
  questions: 'Preguntas',
  askText: (who) => `Pregunte a ${who}.`,
  askOpen: 'Pregunte a: ____________________________________',
  posted: (places) => `Puesto a la vista en: ${places}`,
  postedOpen: 'Puesto a la vista en: ____________________________________',
  signFor: 'Por la empresa',
  signRead: 'Leído o entregado a las personas nombradas arriba',
  notHeld:
    'Puede regir una regla de este estado que aquí no está completa. Las cifras valen; esa regla decide qué hay que hacer.',
  basis: (document, paragraph) =>
    `Se da según ${document}${paragraph === '' ? '' : `, párrafo ${paragraph}`}. Valen el texto vigente de la regla y las reglas estatales y locales.`,
};

export const noticeWords = { en, es } as const;
