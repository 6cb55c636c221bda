/** Who did which task where, each day. Written by the supervisor in ten seconds. */
import type { Respirator } from '#reference/respirators.ts';
import { formatDay, formatList } from './quantity.ts';

const facepieces: Readonly<Record<Respirator['facepiece'], string>> = {
  quarter: 'Quarter mask',
  half: 'Half mask',
  full: 'Full facepiece',
  helmetHood: 'Helmet or hood',
  looseFitting: 'Loose-fitting facepiece',
};
const supplies: Readonly<Record<Respirator['supply'], string>> = {
  airPurifying: 'HEPA filters (N100, R100 or P100)',
  poweredAirPurifying: 'powered, HEPA filter',
  suppliedDemand: 'supplied air, demand',
  suppliedContinuous: 'supplied air, continuous flow',
  suppliedPressureDemand: 'supplied air, pressure-demand',
  scbaDemand: 'self-contained, demand',
  scbaPressureDemand: 'self-contained, pressure-demand',
};

const workers = (count: number): string => (count === 1 ? '1 worker' : `${count} workers`);

export const en = {
  heading: 'Who works here today',
  headingOn: (day: string) => `Who worked here on ${formatDay(day, 'en', 'short')}`,
  noShift: 'This shift is not in the book on this device.',
  intro:
    'Whoever did work here counts, with or without a pump. From this follows whom a measurement stands for, and who must be told.',
  same: (day: string, count: number) => `The same as on ${formatDay(day, 'en', 'short')}: ${workers(count)}`,
  save: (count: number) => `Save: ${workers(count)}`,
  saveNone: 'Save who works here',
  clear: 'Take every tick off again',
  nobody: 'Tick who works here, or go back without saving.',
  crew: 'Crew',
  crewHint: 'Tick everyone who is here. A second tap takes the tick off.',
  crewAll: (count: number) => `Show all ${count} people`,
  ofEmployer: (employer: string) => `of ${employer}`,
  each: 'What each one does',
  eachDetail: (parts: readonly string[]) => parts.join(' · '),
  workLine: (name: string, tasks: readonly string[]) =>
    tasks.length === 0 ? `${name}: no task yet` : `${name}: ${formatList(tasks)}`,
  taskMissing: (name: string) => `Say what ${name} does`,
  tasksOf: (name: string) => `What does ${name} do?`,
  usual: 'The tasks here today',
  usualHint: 'For everyone ticked who has no tasks of their own below.',
  usualLine: (tasks: readonly string[]) => `The tasks here today: ${formatList(tasks)}`,
  change: 'Tap to change',
  close: 'Close these lines',
  job: 'Job classification',
  jobNone: 'no job classification',
  respirator: 'Respirator worn',
  respiratorNotNoted: 'Not noted',
  respiratorNone: 'None worn',
  respiratorWorn: ({ supply, facepiece }: Pick<Respirator, 'supply' | 'facepiece'>) =>
    `${facepieces[facepiece]}, ${supplies[supply]}`,
  respiratorDetail: { notNoted: 'respirator not noted', none: 'no respirator' },
  person: {
    add: 'Add a person',
    heading: (n: number) => `New person ${n}`,
    name: 'Name',
    employer: 'Works for another firm: which? Empty means yours',
    employerHint: 'People of other firms count too where they do this work or stand in its air',
    identifier: "The firm's own number for this worker, if there is one",
    identifierHint: 'Never a social security number',
    language: 'Reads',
    languages: { en: 'English', es: 'Español' },
    remove: 'Leave this person out',
  },
  written: 'Written down for this day',
  writtenNone: 'Nobody is written down for this day yet.',
  toDay: 'To the day',
  entry: {
    heading: (name: string) => `${name}: put this day right`,
    gone: 'This entry is not in the book on this device, or it was struck.',
    intro: 'What stood here stays to be seen, struck through, with the reason.',
    why: 'Why is it changed or struck?',
    whyMissing: 'Say in a few words why',
    save: 'Save the correction',
    strike: 'Was not here: strike the entry',
    nothingChanged: 'Nothing is different from what stands there. Change something, or go back.',
    story: 'The story of this day',
  },
  line: {
    heading: 'Who works here today',
    none: 'Nobody is written down yet',
    count: (count: number) => `${workers(count)} written down`,
    detail: 'Everyone who works here, with or without a pump',
  },
  employment: {
    heading: 'Works here from and to',
    intro:
      'Both may stay empty. Somebody who has left is no longer offered for the day’s list; what is owed to them stays owed.',
    from: 'From',
    to: 'To',
    toHint: 'Empty while the person still works here',
    backwards: 'The last day lies before the first. Look at both.',
    nothing: 'Write at least one of the two days.',
    save: 'Save from and to',
    saved: 'Saved: from and to.',
    stands: (from: string | null, to: string | null) =>
      [from === null ? null : `from ${formatDay(from)}`, to === null ? 'still here' : `until ${formatDay(to)}`]
        .filter((part) => part !== null)
        .join(', '),
  },
};

export type RosterWords = typeof en;
