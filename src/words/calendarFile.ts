/** What stands in the calendar file of duties. Read by the office, in a calendar of its own. */
export const en = {
  name: (firm: string | null) => (firm === null ? 'Lead: to do' : `Lead: to do, ${firm}`),
  practice: 'EXAMPLE',
  example: (what: string) => `EXAMPLE: ${what}`,
  under: (document: string, paragraph: string) => `Asked by ${document} ${paragraph}.`,
  caution: 'The current text of the rule, state plans and local codes come first.',
} as const;
