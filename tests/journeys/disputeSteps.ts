/** What two devices come to disagree on, and how somebody settles it: corrections, a void, figures of the day, the list and its pages. */
import { en as settling } from '#words/settle.ts';
import { en as story } from '#words/story.ts';
import { choose, fill, heading, load, type Notebook, says, saysFigures, tap } from './notebookSteps.ts';

export async function openSample(notebook: Notebook, number: string): Promise<void> {
  await tap(notebook, 'Samples');
  await tap(notebook, new RegExp(number));
}

export async function dayShows(
  notebook: Notebook,
  number: string,
  worker: string,
  figures: readonly string[],
): Promise<void> {
  await load(notebook, '/samples');
  await openSample(notebook, number);
  await tap(notebook, 'See the day and its result');
  await heading(notebook, `The day of ${worker}`);
  await saysFigures(notebook, figures);
}

/** The lowest reading of the flow after is put right. */
export async function correctReading(notebook: Notebook, number: string, typed: string, why: string): Promise<void> {
  await load(notebook, '/samples');
  await openSample(notebook, number);
  await tap(notebook, story.correct);
  await tap(notebook, /^Correct: Reading 1, lowest of “Flow after/);
  await heading(notebook, story.correcting.heading);
  await fill(notebook, story.correcting.new, typed);
  await fill(notebook, story.correcting.why, why);
  await tap(notebook, story.correcting.action);
  await says(notebook, new RegExp(`because ${why}`));
}

export async function voidBlank(phone: Notebook, blank: string): Promise<void> {
  await load(phone, '/samples');
  await openSample(phone, blank);
  await tap(phone, /^Void this sample/);
  await fill(phone, 'Why it is void', 'It lay open in the van');
  await tap(phone, 'Void it');
  await says(phone, /^Void: It lay open in the van/);
}

/** Both matters stand in the list: the reading that was changed on both sides, and the blank. */
export async function listsBoth(notebook: Notebook, reading: string, name: string): Promise<void> {
  await load(notebook, '/settle');
  await says(notebook, settling.meanwhile.careful(reading));
  await says(notebook, settling.meanwhile.void);
  await notebook.picture(name);
}

export async function settle(
  office: Notebook,
  line: RegExp,
  choice: string | RegExp | null,
  why: string,
  action: string,
) {
  await load(office, '/settle');
  await tap(office, line);
  await says(office, settling.why);
  if (choice !== null) await choose(office, choice);
  await tap(office, action);
  await says(office, settling.whyMissing);
  await fill(office, settling.why, why);
  await office.picture('settle-one');
  await tap(office, action);
  await heading(office, settling.heading);
}
