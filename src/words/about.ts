/** What this is, what it stands on, and what it does not promise. */
export const en = {
  heading: 'About and cautions',
  what: "Fullshift keeps the records of personal air samples for lead: from the flow check to the day's figure, on this device, with no connection. It speaks to no server and has no account.",
  cautions: {
    heading: 'Cautions',
    lines: [
      'The current text of the rule decides, not this tool. State plans and local codes may ask for more.',
      'Where licensed or certified practice is called for, the licensed or certified person decides.',
      'A figure is as good as the flow checks, the times and the laboratory behind it. What is missing is said; it is never filled in.',
      'A result of one worker on one day stands for nobody else by itself.',
      'Doubt moves a standing to the careful side. It never turns one that is high into one that is low.',
      'Phones carry lead. Tap before entering and after leaving the work area, with clean hands.',
    ],
  },
  editions: {
    heading: 'Versions and editions',
    app: 'Fullshift',
    rules: 'Rules and reference data',
    formulas: 'Formulas',
    limits: 'Limits held',
    readOn: (day: string) => `read ${day}`,
    complete: 'Held complete.',
    figuresOnly: 'Limits only, no list of duties.',
  },
  methods: 'Analytical methods held',
  links: {
    checked: 'How we checked the arithmetic',
    notices: 'Third-party notices',
    noticesDetail: 'The work of others that is part of this, with their licences',
  },
  licence: {
    heading: 'Licence',
    text: 'MIT. You may use, copy, change and pass it on, as long as the notice stays with it. It comes without any warranty.',
  },
};
