/**
 * The first two minutes: whoever plans tomorrow's job, phone in hand, no book and no signal. State and task are all that is asked.
 * Afterwards they know what the crew must wear and why, what must be there beside it, what ends it and whose rule it is.
 */
import { useSearch } from 'wouter';
import { stateByCode } from '#reference/states.ts';
import { Answer } from './Answer.tsx';
import { AskWear } from './AskWear.tsx';
import { answersIn, isShown } from './wearAddress.ts';

export function Wear() {
  const search = useSearch();
  const answers = answersIn(search);
  const complete = stateByCode(answers.stateCode) !== undefined && answers.taskIds.length > 0;
  return isShown(search) && complete ? <Answer answers={answers} /> : <AskWear answers={answers} />;
}
