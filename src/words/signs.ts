/**
 * The words that the rule prescribes for a sign and for the label of a container, to the letter; the wording itself is what is required.
 * Sources: 29 CFR 1926.62(m)(1)(i) and (g)(2)(vii)(A), READ 2026-11-25, 2015 annual edition of the CFR. The Spanish is our own translation.
 */

/** (m)(1)(i), line by line. */
export const signLegend: readonly string[] = [
  'DANGER',
  'LEAD WORK AREA',
  'MAY DAMAGE FERTILITY OR THE UNBORN CHILD',
  'CAUSES DAMAGE TO THE CENTRAL NERVOUS SYSTEM',
  'DO NOT EAT, DRINK OR SMOKE IN THIS AREA',
];

/** (g)(2)(vii)(A), sentence by sentence; printed one after the other. */
export const labelLegend: readonly string[] = [
  'DANGER: CLOTHING AND EQUIPMENT CONTAMINATED WITH LEAD.',
  'MAY DAMAGE FERTILITY OR THE UNBORN CHILD.',
  'CAUSES DAMAGE TO THE CENTRAL NERVOUS SYSTEM.',
  'DO NOT EAT, DRINK OR SMOKE WHEN HANDLING.',
  'DO NOT REMOVE DUST BY BLOWING OR SHAKING.',
  'DISPOSE OF LEAD CONTAMINATED WASH WATER IN ACCORDANCE WITH APPLICABLE LOCAL, STATE, OR FEDERAL REGULATIONS.',
];

export const es = {
  sign: [
    'PELIGRO',
    'ÁREA DE TRABAJO CON PLOMO',
    'PUEDE DAÑAR LA FERTILIDAD O AL NIÑO NO NACIDO',
    'CAUSA DAÑO AL SISTEMA NERVIOSO CENTRAL',
    'NO COMA, BEBA NI FUME EN ESTA ÁREA',
  ],
  label: [
    'PELIGRO: ROPA Y EQUIPO CONTAMINADOS CON PLOMO.',
    'PUEDE DAÑAR LA FERTILIDAD O AL NIÑO NO NACIDO.',
    'CAUSA DAÑO AL SISTEMA NERVIOSO CENTRAL.',
    'NO COMA, BEBA NI FUME AL MANEJARLOS.',
    'NO QUITE EL POLVO SOPLANDO NI SACUDIENDO.',
    'DESECHE EL AGUA DE LAVADO CONTAMINADA CON PLOMO SEGÚN LAS REGLAS LOCALES, ESTATALES O FEDERALES QUE CORRESPONDAN.',
  ],
};

export const en = {
  title: 'Sign and label: lead',
  documentTitle: 'Sign for a lead work area, and label for containers',
  translation: 'In Spanish, our own translation; the words above are the ones prescribed:',
  signBasis:
    'Words of the sign as 29 CFR 1926.62(m)(1)(i) prescribes them. Where exposure is above the permissible limit.',
  labelBasis:
    'Words of the label as 29 CFR 1926.62(g)(2)(vii)(A) prescribes them. On closed containers of clothing and equipment for washing, cleaning or disposal.',
};
