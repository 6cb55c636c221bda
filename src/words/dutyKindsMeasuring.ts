/** Duties of measuring, telling and writing down what was determined: what to do, what fulfils it, where it lies. Read by the office. */
import { at, type KindInWords, paper } from './dutySaid.ts';

export const measuring: Readonly<Record<string, KindInWords>> = {
  initialDetermination: {
    what: (said) =>
      said.params.awaited === 'yes'
        ? `Get the result for ${said.tasks}${at(said)}, and write down what it shows`
        : `Measure ${said.tasks}${at(said)}: find out whether anybody may reach the action level`,
    fulfils:
      'A full-shift sample on whoever is most exposed, with its result; or an earlier measurement of our own that the job may rest on.',
    lies: null,
  },
  measureEach: {
    what: (said) => `Measure for ${said.workers} too: ${said.tasks}${at(said)}`,
    fulfils: 'A measurement of each of them, or one that stands for them on the same shift and tasks, or in writing.',
    lies: null,
  },
  measureAgain: {
    what: (said) => `Measure ${said.workers} again: the day of ${said.day('workOn')} proves nothing low`,
    fulfils: 'A full-shift sample on a regular day, with nothing left open.',
    lies: null,
  },
  sixMonthly: {
    what: (said) => `Measure ${said.workers} again at ${said.tasks}: every six months`,
    fulfils: 'A full-shift sample on the same worker, or one that stands for the worker in writing.',
    lies: null,
  },
  quarterly: {
    what: (said) => `Measure ${said.workers} again at ${said.tasks}: every three months`,
    fulfils: 'A full-shift sample on the same worker, or one that stands for the worker in writing.',
    lies: null,
  },
  additionalMonitoring: {
    what: (said) => `Measure ${said.workers} anew at ${said.tasks}: something changed on ${said.day('changedOn')}`,
    fulfils: 'A full-shift sample taken after the change.',
    lies: null,
  },
  observation: {
    what: (said) => `Let workers and whoever speaks for them watch the measuring${at(said)}`,
    fulfils: 'That it was offered, to whom and on which day. Whoever watches wears what the place asks for.',
    lies: paper('A note of the offer'),
    whose: 'The worker decides whether to watch; the firm has to offer it.',
  },
  notice: {
    what: (said) =>
      said.params.revised === 'yes'
        ? `Tell ${said.workers} the revised result of ${said.day('workOn')}`
        : `Tell ${said.workers} the result of ${said.day('workOn')}`,
    fulfils: 'A notice in writing to each of them, or posted where each can read it.',
    lies: null,
  },
  correctiveAction: {
    what: (said) => `Say in the notice of ${said.day('workOn')} what is done to bring the exposure down`,
    fulfils:
      'The notice says that the exposure was, or may have been, at or above the permissible limit, and what is done about it.',
    lies: null,
  },
  writeDetermination: {
    what: (said) => `Write down that nobody reaches the action level: ${said.tasks}${at(said)}`,
    fulfils: 'The written negative initial determination: what it stands on, the day, the place, who was measured.',
    lies: null,
  },
  determinationDiffers: {
    what: (said) => `Look at the written determination again: ${said.tasks}${at(said)}`,
    fulfils: 'A determination written on what stands in the book now.',
    lies: null,
  },
};
