/** Duties of which only is kept that they were done: whoever notes them is told so before typing. */

const medicalKinds: ReadonlySet<string> = new Set(['bloodTests', 'bloodResultsTold', 'surveillance', 'physicianTold']);

export const isMedical = (kind: string): boolean => medicalKinds.has(kind);
