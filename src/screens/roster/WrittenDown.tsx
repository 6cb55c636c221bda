/** Who is written down for this day already; each line opens to be put right or struck. */
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/roster.ts';
import { rosterOf, taskNames, textOfLine, workDetail } from './work.ts';

export function WrittenDown({ shiftId, book }: { readonly shiftId: string; readonly book: Book }) {
  return (
    <Lines heading={words.written} whenEmpty={words.writtenNone}>
      {rosterOf(shiftId, book).map((line) => {
        const person = book.people.get(line.workerId);
        const detail = workDetail(textOfLine(line), book);
        return (
          <Line
            key={line.worked.factId}
            to={`/shift/${shiftId}/roster?entry=${line.worked.factId}`}
            detail={person?.employer == null ? detail : words.eachDetail([words.ofEmployer(person.employer), detail])}
          >
            {words.workLine(person?.name ?? '', taskNames(line.worked.taskIds))}
          </Line>
        );
      })}
    </Lines>
  );
}
