/** Pumps, flow meters and lots: the list, each of their pages, every form, what rests on gear found bad, and the decision. */
import { choose, fill, heading, open, pick, type Stop, tap, to, type Visitor } from './everyPageSteps.ts';

/** Before anything was written down, and an address of nothing. */
export const gearNewBookTour: readonly Stop[] = [
  pick('/gear', 'empty', { go: to('/gear'), shows: /^There are no pumps, flow meters or lots yet/ }),
  pick('/gear/:kind/:id', 'empty', {
    go: to('/gear/pump/0123456789ab'),
    shows: /^No pump, flow meter or lot with this address/,
  }),
];

const one = (name: string | RegExp, known: string) => async (v: Visitor) => {
  await open(v, '/gear');
  await v.page.getByRole('link', { name }).first().click();
  await v.page.waitForURL(/#\/gear\/\w+\/\w+/);
  v.known.set(known, new URL(v.page.url()).hash.slice(1).split('?')[0] ?? '');
};
const doing = (known: string, what: string) => (v: Visitor) => open(v, `${v.known.get(known)}?do=${what}`);

export const gearPracticeTour: readonly Stop[] = [
  pick('/gear', 'filled', { go: to('/gear'), shows: 'To see to', tab: true }),
  pick('/gear/:kind/:id', 'filled', {
    as: 'lot',
    go: one(/^EX-0921/, 'lotPage'),
    shows: 'Field blanks by box',
  }),
  pick('/gear/:kind/:id', 'filled', { as: 'pump', go: one(/^P-14/, 'pumpPage'), shows: 'Samples it wore', tab: true }),
  pick('/gear/:kind/:id', 'filled', {
    as: 'charged',
    go: (v) => tap(v, 'Charged to the full now'),
    shows: /^Charged to the full, /,
  }),
  pick('/gear/:kind/:id', 'filled', { as: 'charge', go: doing('pumpPage', 'charge'), shows: 'How far?', tab: true }),
  pick('/gear/:kind/:id', 'error', { go: (v) => tap(v, 'Save when it was charged'), shows: /^Fill in: Time/ }),
  pick('/gear/:kind/:id', 'filled', { as: 'held', go: doing('pumpPage', 'held'), shows: 'Is it in use?', tab: true }),
  pick('/gear/:kind/:id', 'filled', { as: 'meter', go: one(/^DP-3/, 'meterPage'), shows: 'Certificates' }),
  pick('/gear/:kind/:id', 'filled', {
    as: 'certificate',
    go: doing('meterPage', 'certificate'),
    shows: 'Next one due on',
    tab: true,
  }),
  pick('/gear/:kind/:id', 'error', {
    as: 'certificate-without-date',
    go: (v) => tap(v, 'Save the certificate'),
    shows: /^Fill in: Date of the certificate/,
  }),
  pick('/gear/:kind/:id', 'filled', {
    as: 'found-bad',
    go: doing('meterPage', 'found-bad'),
    shows: 'What was found?',
    tab: true,
  }),
  pick('/gear/:kind/:id', 'error', {
    as: 'nothing-found',
    go: (v) => tap(v, 'Save that it was found bad'),
    shows: /^Fill in: What was found/,
  }),
  pick('/gear/:kind/:id', 'filled', {
    as: 'doubt',
    go: async (v) => {
      await fill(v, 'What was found?', 'Reads 9 % high against the soap film');
      await fill(v, 'Doubtful from', 'yesterday');
      await fill(v, 'Doubtful until', 'yesterday');
      await tap(v, 'Save that it was found bad');
      await heading(v, 'What rests on flow meter DP-3');
      await v.page.locator('summary').first().click();
    },
    shows: 'What follows from it?',
    tab: true,
  }),
  pick('/settle', 'filled', {
    as: 'gear',
    go: async (v) => {
      v.known.set('doubtPage', new URL(v.page.url()).hash.slice(1));
      await open(v, '/settle');
    },
    shows: 'Gear that was found bad',
  }),
  pick('/gear/:kind/:id', 'filled', {
    as: 'chosen',
    go: async (v) => {
      await to(v.known.get('doubtPage') ?? '')(v);
      await choose(v, 'Correct it by what was found');
      await fill(v, 'True flow over the flow that it read', '0.92');
    },
    shows: 'What this decision will change',
  }),
  pick('/gear/:kind/:id', 'error', {
    as: 'without-reason',
    go: (v) => tap(v, 'Save the decision'),
    shows: /^Say in a few words what shows it/,
  }),
  pick('/gear/:kind/:id', 'filled', {
    as: 'settled',
    go: async (v) => {
      await choose(v, 'It had no effect');
      await fill(v, 'Why? What shows it?', 'Read again with the right cell: true');
      await tap(v, 'Save the decision');
    },
    shows: /^Decided: it had no effect/,
  }),
];
