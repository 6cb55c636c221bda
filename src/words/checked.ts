/** How the arithmetic was checked: published worked examples, computed on this device while the page is open. */
export const en = {
  heading: 'How we checked the arithmetic',
  intro:
    'Each of these was worked out and printed by somebody else. The same formulas that reckon your samples have just reckoned them again on this device.',
  allAgree: (count: number) => `All ${count} agree with what was printed, as closely as it was printed.`,
  someDiffer: (count: number, of: number) =>
    `${count} of ${of} differ from what was printed. Do not rely on the figures of this device; load the page again, and tell whoever looks after it.`,
  published: 'Published examples',
  common: 'Common practice, no source read',
  printed: 'Printed',
  ours: 'Ours',
  difference: 'Apart',
  inputs: 'From',
  agrees: 'agrees',
  differs: 'differs',
  tolerance: (text: string) => `Allowed: ${text}`,
  source: 'Source',
};
