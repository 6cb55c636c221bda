/** The five terms of a group by the conditions of its last day that has them, in words; null where no day has them. */
import { termsOn } from '#findings/duties/groups/resemblance.ts';
import { resemblanceTerms, type TaskGroup } from '#findings/duties/groups/taskGroup.ts';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/groups.ts';
import { formatList, inSentence } from '#words/quantity.ts';
import { en as reliance } from '#words/reliance.ts';
import { taskNames } from './groupText.ts';

export function termsInWords(group: TaskGroup, book: Book): readonly (readonly [string, string])[] | null {
  const last = [...group.days].reverse().find(({ shiftId }) => book.shifts.get(shiftId)?.conditions);
  const conditions = book.shifts.get(last?.shiftId ?? '')?.conditions;
  if (!conditions) return null;
  const terms = termsOn(conditions, group.taskIds);
  return resemblanceTerms.map((term) => {
    const parts = Object.entries(terms[term]).map(([name, value]) => {
      if (value === null) return `${reliance.label(name)} ${reliance.notWrittenDown}`;
      return name === 'tasks' ? inSentence(formatList(taskNames(value.split('+')))) : reliance.value(name, value);
    });
    return [words.termNames[term], parts.join(', ')] as const;
  });
}
