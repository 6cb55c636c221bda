/** What every paper says of itself at its foot and its end, in English and Spanish. */
import { type FormatOptions, formatDay } from './quantity.ts';

export type PaperLanguage = NonNullable<FormatOptions['language']>;

export const en = {
  lang: 'en-US',
  /** The same word in every language: it says what it is across the page. */
  example: 'EXAMPLE',
  exampleNote: 'EXAMPLE from a practice book: nothing on this paper was measured. Do not keep it as a record.',
  made: (day: string, time: string) => `Made ${formatDay(day, 'en')} at ${time}`,
  revision: (revision: string) => `revision ${revision}`,
  replaces: (revision: string, before: string, why: string | null) =>
    `Revision ${revision} replaces revision ${before}, which no longer holds.${why === null ? '' : ` What changed and why: ${why}`}`,
  page: (number: number, count: number) => `page ${number} of ${count}`,
  goesOn: (title: string) => `${title}, continued`,
  attached: (name: string) => `The values of this paper are attached to the PDF file as ${name}.`,
  heads: (heads: string) => `Record heads when this paper was made: ${heads === '' ? 'none' : heads}`,
  headsShort: (heads: string) => `record heads ${heads === '' ? 'none' : heads}`,
  editions: (app: string, rules: string, formulas: string) =>
    `Fullshift ${app} · rules ${rules} · formulas ${formulas}`,
  bracketNote:
    'Figures in square brackets, such as [U+1F600], stand for letters or signs that this typeface does not hold, by their Unicode numbers. The data attached to this file keep them as they were written.',
  sign: { name: 'Name', signature: 'Signature', date: 'Date' },
  notNoted: 'not written down',
};

export type PaperWords = typeof en;

export const es: PaperWords = {
  lang: 'es-US',
  example: 'EXAMPLE',
  exampleNote:
    'EXAMPLE (ejemplo) de un libro de práctica: nada de lo que dice este papel se midió. No lo guarde como registro.',
  made: (day, time) => `Hecho el ${formatDay(day, 'es')} a las ${time}`,
  revision: (revision) => `revisión ${revision}`,
  replaces: (revision, before, why) =>
    `La revisión ${revision} reemplaza a la revisión ${before}, que ya no vale.${why === null ? '' : ` Qué cambió y por qué: ${why}`}`,
  page: (number, count) => `página ${number} de ${count}`,
  goesOn: (title) => `${title}, continuación`,
  attached: (name) => `Los valores de este papel van dentro del archivo PDF, con el nombre ${name}.`,
  heads: (heads) => `Últimos asientos del libro cuando se hizo este papel: ${heads === '' ? 'ninguno' : heads}`,
  headsShort: (heads) => `últimos asientos ${heads === '' ? 'ninguno' : heads}`,
  editions: (app, rules, formulas) => `Fullshift ${app} · reglas ${rules} · fórmulas ${formulas}`,
  bracketNote:
    'Las cifras entre corchetes, como [U+1F600], representan letras o signos que este tipo de letra no tiene, por su número Unicode. Los datos que van dentro de este archivo los conservan tal como se escribieron.',
  sign: { name: 'Nombre', signature: 'Firma', date: 'Fecha' },
  notNoted: 'no está anotado',
};

export const paperWords: Readonly<Record<PaperLanguage, PaperWords>> = { en, es };
