/**
 * No medical value is ever kept. What looks like one in a line of free text is refused at the field: a slip is caught, nobody is
 * stopped who means to. Numbers with a unit of blood tests, or beside their names, in English and Spanish.
 */

const withUnit = /\d\s*(?:[µμu]g|mcg|mg|[µμu]mol)?\s*(?:\/|per )\s*(?:dl|100\s*ml|100\s*g|l)\b/i;
const withName = /\b(?:bll|pbb|zpp|blood[- ]lead|lead in (?:the )?blood|plomo en (?:la )?sangre)\b[^\d\n]{0,24}\d/i;

export const looksMedical = (text: string): boolean => withUnit.test(text) || withName.test(text);
