/** Labels for filter cassettes: what stands on them, and what they are printed on. Read by supervisor and laboratory. */

export const en = {
  lang: 'en-US',
  documentTitle: (site: string, workOn: string) => `Labels, ${site}, ${workOn}`,
  example: 'EXAMPLE',
  blank: 'FIELD BLANK',
  spare: 'SPARE',
  /** What the code of a label is, for whoever has it read aloud. */
  codeOf: (spaced: string) => `Code of the number ${spaced}`,
  attached: 'The numbers of these labels, as data.',
  sheets: {
    letter30: 'Letter sheet, 30 labels, 2⅝ × 1 in',
    letter10: 'Letter sheet, 10 labels, 4 × 2 in',
    a4Of21: 'A4 sheet, 21 labels, 63.5 × 38.1 mm',
    a4Of65: 'A4 sheet, 65 labels, 38.1 × 21.2 mm',
    single62: 'Single labels, 62 × 29 mm',
    single57: 'Single labels, 57 × 32 mm',
  },
  /** The sizes are from memory: said beside the choice. */
  sheetNote:
    'Sizes as such sheets usually have them. Print on plain paper first, at 100 %, and hold it against the label sheet.',
};
