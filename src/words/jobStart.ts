/** Asked when a job starts: what is new since the measurement that it rests on. Written by the supervisor. */
import type { FactBody } from '#records/fact.ts';

type Asked = FactBody<'changesAsked.v1'>;
export type ChangeKey = 'equipment' | 'process' | 'control' | 'personnel' | 'newTask';
export type Said = Asked[ChangeKey];

export const changeKeys: readonly ChangeKey[] = ['personnel', 'equipment', 'process', 'control', 'newTask'];

export const en = {
  heading: 'Is anything new at this job?',
  noShift: 'This shift is not in the book on this device.',
  intro: 'Compared with the day on which the air was last measured at this kind of work.',
  questions: {
    personnel: 'New people at this work?',
    equipment: 'A new tool or other equipment?',
    process: 'Another way of doing the work?',
    control: 'Other controls: water, shroud, containment, ventilation?',
    newTask: 'A task that was not done then?',
  } satisfies Record<ChangeKey, string>,
  answers: { no: 'No', yes: 'Yes', notKnown: 'Not known' } satisfies Record<Said, string>,
  means: {
    heading: 'What it means',
    open: 'Answer the five questions, and what follows is said here.',
    none: 'Nothing is new. What was measured before keeps its meaning for this job, as far as the day is like that one.',
    changed: 'Measure again at this job if the change can bring more lead into the air.',
    changedWhy:
      'The rule asks for additional monitoring where a change of equipment, process, control or people, or a new task, may put more workers at or above the action level, or those above it over the limit. Whether it can is the firm’s decision; until someone decides, measuring again stands under what is to do.',
    notKnown: 'What is not known counts as a change until somebody finds out.',
    presumed: 'Until there is a result, the crew wears what is presumed for the task.',
  },
  save: 'Save the answers',
  why: 'Why is the answer changed?',
  whyMissing: 'Say in a few words why the answer is changed',
  correct: 'Save the correction',
  stands: 'These answers are written down. Changing one needs a reason.',
  nothingChanged: 'No answer is different. Change one, or go back.',
  rely: 'Rely on an earlier measurement',
  relyDetail: 'Five comparisons between this day and that one',
  line: {
    heading: 'Is anything new at this job?',
    none: 'Not asked yet',
    nothing: 'Nothing is new',
    some: 'Something is new: measuring again is asked for',
    notKnown: 'Not known: counts as new',
  },
};

export type JobStartWords = typeof en;
