/** The pumps while they run and after they came off: what the supervisor taps, and what is typed afterwards from a watch. */
import { checkFlowOf, checkFlowsBefore, fitInEnglish, prepare, type Worker } from './fieldSteps.ts';
import { choose, fill, heading, type Notebook, says, tap, tick } from './notebookSteps.ts';

type Reading = readonly [string, string];

/** From any page to a line of the day's page. */
export async function fromTheDay(notebook: Notebook, line: string | RegExp): Promise<void> {
  await tap(notebook, 'Today');
  await tap(notebook, /^The day's page/);
  await heading(notebook, /^The day at /);
  await tap(notebook, line);
}

export async function putOn(notebook: Notebook, worker: string): Promise<void> {
  await heading(notebook, `Put the pump on ${worker}`);
  await tap(notebook, 'Put on now');
  await heading(notebook, `The pump is on ${worker}`);
}

/** A look, begun from what is due on Today. */
/** The first worker of a day: pumps checked at 06:20, fitted at 06:35, on the worker at 06:50. The number on the cassette. */
export async function putOnFirst(notebook: Notebook, worker: Worker, initials: string): Promise<string> {
  await notebook.at('06:20');
  await checkFlowsBefore(notebook, ['2.5', '2.6'], ['2.4', '2.5']);
  await notebook.at('06:35');
  await tap(notebook, 'Prepare a worker');
  const number = await prepare(notebook, worker);
  await tap(notebook, `Hand the phone to ${worker.name}`);
  await fitInEnglish(notebook, initials);
  await notebook.at('06:50');
  await putOn(notebook, worker.name);
  return number;
}

export async function lookFromToday(notebook: Notebook, worker: string, time: string): Promise<void> {
  await tap(notebook, 'Today');
  await tap(notebook, `${worker}: look at the pump`);
  await heading(notebook, `The pump is on ${worker}`);
  await tap(notebook, 'Looked at it');
  await says(notebook, `Last looked at ${time}.`);
}

/** The old cassette stops at the tap on the line; the flow between the two is checked, and the new one prepared. */
export async function changeCassette(notebook: Notebook, worker: string, pumpMin: string, between: Reading) {
  await fromTheDay(notebook, new RegExp(`^${worker}: put on`));
  await tap(notebook, /^Change the cassette/);
  await heading(notebook, 'Change the cassette');
  await fill(notebook, /^The pump's own minutes now/, pumpMin);
  await notebook.picture('change-cassette');
  await tap(notebook, 'Old one off, prepare the new one');
  await heading(notebook, `The cassette for ${worker} is prepared.`);
  await notebook.picture('changed');
  await tap(notebook, 'Check the flow between the two cassettes');
  await heading(notebook, 'Check the flow between two cassettes');
  await checkFlowOf(notebook, between, '20');
  await notebook.picture('flow-between');
  await tap(notebook, 'Save this flow check');
}

export async function goAway(notebook: Notebook, worker: string): Promise<void> {
  await fromTheDay(notebook, new RegExp(`^${worker}: put on`));
  await notebook.picture('on-worker-later');
  await tap(notebook, /^Away from the lead area/);
  await choose(notebook, /^Lunch or a break/);
  await notebook.picture('away');
  await tap(notebook, 'Away now');
  await heading(notebook, `${worker} is away from the lead area`);
  await notebook.picture('is-away');
}

export async function takeOff(notebook: Notebook, worker: string): Promise<void> {
  await fromTheDay(notebook, new RegExp(`^${worker}: put on`));
  await tap(notebook, /^Pump off the worker/);
  await choose(notebook, 'Lunch or a break');
  await choose(notebook, 'is switched off');
  await choose(notebook, 'is away from the lead area');
  await notebook.picture('off-worker');
  await tap(notebook, 'Off the worker now');
  await heading(notebook, `The pump is off ${worker}`);
  await notebook.picture('is-off');
}

interface Leaving {
  readonly worker: string;
  readonly pumpMin: string;
  readonly after: Reading;
  /** The flow before, as it stands in the working's figures. */
  readonly average: string;
  readonly volume: string;
}

/** After a stop: the pump's own minutes, the flow after, regular day, sealed and locked in. */
export async function afterLeaving(notebook: Notebook, leaving: Leaving, name: string): Promise<void> {
  await heading(notebook, `After leaving: ${leaving.worker}`);
  await notebook.picture(`${name}-open`);
  await fill(notebook, /^The pump's own minutes/, leaving.pumpMin);
  await tap(notebook, "Save the pump's minutes");
  await says(notebook, /^The pump shows /);
  await tap(notebook, 'Check the flow after');
  await heading(notebook, 'Check the flow after');
  await checkFlowOf(notebook, leaving.after, '24');
  await notebook.picture(`${name}-flow`);
  await tap(notebook, 'Save this flow check');
  await heading(notebook, `After leaving: ${leaving.worker}`);
  await says(notebook, leaving.average);
  await says(notebook, leaving.volume);
  await choose(notebook, 'Yes, a regular day');
  await tap(notebook, 'Save the day');
  await says(notebook, 'A regular day.');
  await seal(notebook);
  await says(notebook, 'All of it is written down.');
  await notebook.picture(`${name}-done`);
}

export async function seal(notebook: Notebook): Promise<void> {
  await tick(notebook, 'The number stands on the cassette');
  await fill(notebook, /^Locked in where/, 'Steel box in the van');
  await tap(notebook, 'Sealed now');
  await says(notebook, /^Locked in: Steel box in the van, by Wanda Keel\.$/);
}

/** The stop was seen on a watch and is typed afterwards. */
export async function stopTyped(notebook: Notebook, worker: string, time: string): Promise<void> {
  await fromTheDay(notebook, new RegExp(`^${worker}: put on`));
  await tap(notebook, /^Stopped earlier: write in the time/);
  await heading(notebook, 'Stopped at another time');
  await fill(notebook, 'Time', '25:10');
  await tap(notebook, 'Save: stopped');
  await says(notebook, /there is no such time on a clock/);
  await notebook.picture('stop-typed-wrong');
  await fill(notebook, 'Time', time);
  await fill(notebook, /^From what, and by whom/, 'Watch of Tomás, Wanda Keel');
  await notebook.picture('stop-typed');
  await tap(notebook, 'Save: stopped');
}

export async function openBlanks(notebook: Notebook): Promise<void> {
  await fromTheDay(notebook, /^0 of 2 field blanks/);
  await heading(notebook, 'Open a field blank');
  await fill(notebook, /^Where it was opened/, 'At the change area');
  await notebook.picture('blank');
  await tap(notebook, 'Opened and closed now');
  await heading(notebook, 'Write this number on the blank');
  await notebook.picture('blank-number');
  await tap(notebook, 'Open another blank');
  await notebook.at('15:25');
  await tap(notebook, 'Opened and closed now');
  await heading(notebook, 'Write this number on the blank');
}

const conditions = [
  ['Tool', 'Hand tools'],
  ['Wet or dry', 'Dry'],
  ['Dust collected at the tool', 'None'],
  ['Containment', 'Partly closed'],
  ['Air in the work area', 'Open to wind'],
  ['Weather', 'Dry, calm'],
  ['Lead in the paint', 'Tested'],
  ['How much was worked on', 'About a room'],
] as const;

export async function noteConditions(notebook: Notebook): Promise<void> {
  await fromTheDay(notebook, /^Not written down yet/);
  await heading(notebook, 'Conditions of the day');
  await tap(notebook, 'Save the conditions');
  await says(notebook, 'Choose: Tool');
  for (const [label, option] of conditions) await choose(notebook, option, new RegExp(`^${label}`));
  await notebook.picture('conditions');
  await tap(notebook, 'Save the conditions');
  await heading(notebook, /^The day at /);
}

/** A time is put right in the story of a sample, with its reason; the old one stays struck through. */
export async function correctTime(notebook: Notebook, field: string, time: string, why: string): Promise<void> {
  await tap(notebook, 'Correct a value');
  await notebook.picture('correct-which');
  await tap(notebook, field);
  await heading(notebook, 'Correct a value');
  await fill(notebook, 'Right value', time);
  await tap(notebook, 'Save the correction');
  await says(notebook, 'Say why in a few words');
  await fill(notebook, /^Why/, why);
  await notebook.picture('correct');
  await tap(notebook, 'Save the correction');
  await says(notebook, new RegExp(`because ${why}`));
}
