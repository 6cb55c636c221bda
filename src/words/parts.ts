/** The few words that parts say by themselves, in English and in Spanish (workers read some of these pages). */

export type Language = 'en' | 'es';

/** Why typed text is not a quantity. */
export type QuantityErrorKey =
  | 'letters'
  | 'twoMarks'
  | 'twoNumbers'
  | 'thousands'
  | 'wrongUnit'
  | 'lessThan'
  | 'negative'
  | 'tooLow'
  | 'tooHigh';
export type DateErrorKey = 'notADate' | 'noSuchDay' | 'dayFirst' | 'noYear' | 'future';
export type TimeErrorKey = 'notATime' | 'incomplete' | 'noSuchTime';

export interface QuantityErrorAbout {
  readonly label: string;
  readonly unit: string;
  readonly found?: string | undefined;
  readonly least?: string | undefined;
  readonly most?: string | undefined;
}

export const en = {
  back: 'Back',
  errorTitle: 'Error: ',
  errorHeading: 'Look at this before going on',
  errorPrefix: 'Error: ',
  missing: (label: string) => `Fill in: ${label}`,
  choose: (label: string) => `Choose: ${label}`,
  chooseOne: 'Choose one',
  tooLong: (label: string, most: number) => `${label}: write it shorter, in ${most} letters at most`,
  quantity: {
    letters: ({ label, unit }: QuantityErrorAbout) =>
      `${label}: write a number${unit ? ` in ${unit}` : ''}, without words`,
    twoMarks: ({ label }: QuantityErrorAbout) =>
      `${label}: there is more than one comma or point; write it like 1234.5`,
    twoNumbers: ({ label }: QuantityErrorAbout) => `${label}: there are two numbers; write one`,
    thousands: ({ label }: QuantityErrorAbout) =>
      `${label}: the comma can be read in two ways; write 1234 or 1.234, whichever is meant`,
    wrongUnit: ({ label, unit, found }: QuantityErrorAbout) =>
      `${label}: this was typed in ${found ?? 'another unit'}; the field wants ${unit || 'a plain number'}`,
    lessThan: ({ label }: QuantityErrorAbout) => `${label}: "less than" has a choice of its own; write the number only`,
    negative: ({ label }: QuantityErrorAbout) => `${label}: the number must not be below zero`,
    tooLow: ({ label, least, unit }: QuantityErrorAbout) => `${label}: must be ${least ?? ''} ${unit} or more`,
    tooHigh: ({ label, most, unit }: QuantityErrorAbout) => `${label}: must be ${most ?? ''} ${unit} or less`,
  } satisfies Record<QuantityErrorKey, (about: QuantityErrorAbout) => string>,
  date: {
    notADate: 'write the day like 2026-11-25 or 11/25/2026',
    noSuchDay: 'there is no such day in the calendar',
    dayFirst: 'the month comes first: 11/25/2026',
    noYear: 'add the year, like 11/25/2026',
    future: 'this day has not come yet',
  } satisfies Record<DateErrorKey, string>,
  time: {
    notATime: 'write the time like 07:12 or 7:12 am',
    incomplete: 'add the minutes, like 07:00',
    noSuchTime: 'there is no such time on a clock',
  } satisfies Record<TimeErrorKey, string>,
  dateHint: 'Such as 11/25/2026, today or yesterday',
  timeHint: '24-hour clock, such as 07:12 or 1912; am and pm are understood',
  today: 'today',
  yesterday: 'yesterday',
  floatLow: 'lowest',
  floatHigh: 'highest',
  floatHint: 'A float that stands still: write the same number twice, or the first alone',
  remove: 'Remove',
  show: 'Show',
  hide: 'Hide',
  cancel: 'Go back without doing this',
  reason: 'Why',
  reasonMissing: 'Say why in a few words',
  saving: 'Writing down',
  saved: 'Saved on this device',
  savedAt: (at: string) => `Saved on this device at ${at}`,
  notSaved: 'Not saved yet: what you typed is still on this page',
  showWorking: 'How this was worked out',
  recorded: 'as written down',
  fromRule: 'from the rule',
  fromMethod: 'from the method',
  ownDerivation: 'our own derivation',
  commonPractice: 'common practice, no source read',
  source: 'Source',
  whereStands: 'Where',
  from: 'from',
  standing: {
    below: 'below',
    exactlyAt: 'exactly at',
    above: 'above',
    unresolved: 'not settled',
    good: 'good',
    doubtful: 'doubtful',
    void: 'void',
    waiting: 'not known yet',
    due: 'due',
    done: 'done',
  },
};

export type PartsWords = typeof en;

export const es: PartsWords = {
  back: 'Atrás',
  errorTitle: 'Error: ',
  errorHeading: 'Revise esto antes de seguir',
  errorPrefix: 'Error: ',
  missing: (label) => `Falta: ${label}`,
  choose: (label) => `Elija: ${label}`,
  chooseOne: 'Elija uno',
  tooLong: (label, most) => `${label}: escríbalo más corto, en ${most} letras como máximo`,
  quantity: {
    letters: ({ label, unit }) => `${label}: escriba un número${unit ? ` en ${unit}` : ''}, sin palabras`,
    twoMarks: ({ label }) => `${label}: hay más de una coma o punto; escríbalo como 1234.5`,
    twoNumbers: ({ label }) => `${label}: hay dos números; escriba uno`,
    thousands: ({ label }) => `${label}: la coma se puede leer de dos maneras; escriba 1234 o 1.234, según el caso`,
    wrongUnit: ({ label, unit, found }) =>
      `${label}: está escrito en ${found ?? 'otra unidad'}; aquí va ${unit ? `en ${unit}` : 'solo un número'}`,
    lessThan: ({ label }) => `${label}: "menos de" se elige aparte; escriba solo el número`,
    negative: ({ label }) => `${label}: el número no puede ser menor que cero`,
    tooLow: ({ label, least, unit }) => `${label}: tiene que ser ${least ?? ''} ${unit} o más`,
    tooHigh: ({ label, most, unit }) => `${label}: tiene que ser ${most ?? ''} ${unit} o menos`,
  },
  date: {
    notADate: 'escriba el día como 2026-11-25 o 11/25/2026',
    noSuchDay: 'ese día no existe en el calendario',
    dayFirst: 'primero va el mes: 11/25/2026',
    noYear: 'falta el año, como 11/25/2026',
    future: 'ese día todavía no llega',
  },
  time: {
    notATime: 'escriba la hora como 07:12 o 7:12 am',
    incomplete: 'faltan los minutos, como 07:00',
    noSuchTime: 'esa hora no existe en el reloj',
  },
  dateHint: 'Por ejemplo 11/25/2026, hoy o ayer',
  timeHint: 'Reloj de 24 horas, por ejemplo 07:12 o 1912; también am y pm',
  today: 'hoy',
  yesterday: 'ayer',
  floatLow: 'más bajo',
  floatHigh: 'más alto',
  floatHint: 'Si el flotador está quieto: escriba el mismo número dos veces, o solo el primero',
  remove: 'Quitar',
  show: 'Mostrar',
  hide: 'Ocultar',
  cancel: 'Volver sin hacer esto',
  reason: 'Por qué',
  reasonMissing: 'Diga por qué en pocas palabras',
  saving: 'Anotando',
  saved: 'Guardado en este aparato',
  savedAt: (at) => `Guardado en este aparato a las ${at}`,
  notSaved: 'Todavía no está guardado: lo escrito sigue en esta página',
  showWorking: 'Cómo se calculó',
  recorded: 'como se anotó',
  fromRule: 'de la norma',
  fromMethod: 'del método',
  ownDerivation: 'cálculo nuestro',
  commonPractice: 'práctica común, sin fuente leída',
  source: 'Fuente',
  whereStands: 'Dónde',
  from: 'de',
  standing: {
    below: 'por debajo',
    exactlyAt: 'exactamente en',
    above: 'por encima',
    unresolved: 'sin decidir',
    good: 'buena',
    doubtful: 'dudosa',
    void: 'anulada',
    waiting: 'aún no se sabe',
    due: 'por hacer',
    done: 'hecho',
  },
};
