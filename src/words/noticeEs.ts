/** The notice of results in Spanish. */
import type { NoticeWords } from './notice.ts';
import { formatDay, formatInWorking } from './quantity.ts';

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
    'Se trata del aire mismo, como si nadie usara respirador. µg/m³ quiere decir microgramos (millonésimas de gramo) de plomo en cada metro cúbico de aire.',
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
  pelHeadings: { was: 'En el límite o por encima', mayHaveBeen: 'Puede estar en el límite o por encima' },
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
    'La persona medida llevó la bomba. Las demás hicieron el mismo trabajo el mismo día, o están nombradas por escrito.',
  standsForOne: 'Esta persona llevó la bomba; el resultado es el suyo.',
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
