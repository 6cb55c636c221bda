/** Today's page: the day and site, what is due in the order of the day, what is still open from before. */
import type { DueKey } from '#findings/due.ts';
import { formatMinutes } from './quantity.ts';

export interface DueAbout {
  readonly worker: string;
  readonly number: string;
  readonly pump: string;
  readonly params: Readonly<Record<string, string | number>>;
}

interface DueWords {
  /** How it stands, as a sentence of the list. */
  readonly sentence: (about: DueAbout) => string;
  /** What to do about it: the main action. */
  readonly action: (about: DueAbout) => string;
}

export const due: Readonly<Record<DueKey, DueWords>> = {
  flowBefore: {
    sentence: ({ worker, pump }) => `${worker}: pump ${pump} has no flow before`,
    action: ({ pump }) => `Check the flow of pump ${pump}`,
  },
  fit: {
    sentence: ({ worker }) => `${worker}: the fitting is not checked`,
    action: ({ worker }) => `Check the fitting with ${worker}`,
  },
  putOn: {
    sentence: ({ worker, number }) => `${worker}: sample ${number} is ready and not put on`,
    action: ({ worker }) => `Put the pump on ${worker}`,
  },
  look: {
    sentence: ({ worker }) => `${worker}: look at the pump`,
    action: ({ worker }) => `Look at the pump on ${worker}`,
  },
  stop: {
    sentence: ({ worker, params }) =>
      `${worker}: the pump has been on for ${formatMinutes(Number(params.soFarMin ?? 0))}; the work should be over`,
    action: ({ worker }) => `Stop the pump of ${worker}`,
  },
  flowAfter: {
    sentence: ({ worker, pump }) => `${worker}: pump ${pump} has no flow after`,
    action: ({ pump }) => `Check the flow of pump ${pump} again`,
  },
  seal: {
    sentence: ({ worker, number }) => `${worker}: cassette ${number} is not sealed`,
    action: ({ number }) => `Seal cassette ${number}`,
  },
  lockIn: {
    sentence: ({ worker, number }) => `${worker}: cassette ${number} is not locked in`,
    action: ({ number }) => `Lock cassette ${number} in`,
  },
  blanks: {
    sentence: ({ params }) => `Field blanks: ${params.blanksCount ?? 0} of ${params.wantedCount ?? 0}`,
    action: () => 'Open a field blank',
  },
  conditions: {
    sentence: () => 'The conditions of the day are not written down',
    action: () => 'Write down the conditions of the day',
  },
  regularDay: {
    sentence: ({ worker }) => `${worker}: was it a regular day?`,
    action: ({ worker }) => `Say whether it was a regular day for ${worker}`,
  },
  sendToLaboratory: {
    sentence: ({ params }) =>
      Number(params.samplesCount) === 1
        ? 'One sealed cassette is waiting to be sent'
        : `${params.samplesCount ?? 0} sealed cassettes are waiting to be sent`,
    action: () => 'Pack the box for the laboratory',
  },
  backup: {
    sentence: () => 'A backup is due: what is written here is in this browser alone',
    action: () => 'Make a backup',
  },
};

export const en = {
  heading: (day: string, site: string | null) => (site === null ? day : `${day}, ${site}`),
  whatIsDue: 'What is due',
  nothingDue: 'Nothing is due right now.',
  dueSince: (at: string) => `due since ${at}`,
  dueAt: (at: string) => `due at ${at}`,
  due,
  sendToday: "The shift is over: today's file is not sent yet",
  sendTodayAction: "Send today's file",
  roster: 'Who works here today',
  dayPage: "The day's page",
  dayPageDetail: (onWorkers: number, prepared: number, sealed: number) =>
    [
      onWorkers > 0 ? `${onWorkers} on a worker` : null,
      prepared > 0 ? `${prepared} ready to put on` : null,
      sealed > 0 ? `${sealed} sealed` : null,
    ]
      .filter((part) => part !== null)
      .join(', ') || 'No sample yet',
  openDayPage: "Go to the day's page",
  sites: 'Sites open today',
  earlier: 'Still open from before',
  earlierNotStopped: (worker: string, number: string, day: string) =>
    `${worker}, sample ${number} of ${day}: the pump was not stopped`,
  earlierNotSealed: (worker: string, number: string, day: string) =>
    `${worker}, sample ${number} of ${day}: stopped, not sealed`,
  earlierNotPutOn: (worker: string, number: string, day: string) =>
    `${worker}, sample ${number} of ${day}: prepared, never put on`,
  boxNotSent: (count: number, lab: string) => `A box of ${count} for ${lab} is packed, not handed over`,
  boxAway: (count: number, lab: string, since: string) => `${count} with ${lab} since ${since}`,
  boxArrived: (count: number, lab: string, since: string) => `${count} arrived at ${lab} ${since}; no result yet`,
  awaiting: (count: number) =>
    count === 1 ? 'One cassette has no result yet' : `${count} cassettes have no result yet`,
  awaitingDetail: 'When the report is there, key the results in',
  whoDue: 'Twelve hours have gone by. Who holds this device now?',
  whoNever: 'Say who holds this device: the name stands beside what is written down.',
  whoAction: 'Say who holds it',
  openShift: {
    action: "Open today's shift",
    another: 'Another site today',
    site: 'Where is the work today?',
    add: 'Another site',
    intro: 'Open the shift before the first flow check. Only what is needed now is asked.',
    siteMissing: 'Choose the site, or add it',
    alreadyOpen: 'This site is open today already. Go to its page.',
    cancel: 'Not now',
  },
};
