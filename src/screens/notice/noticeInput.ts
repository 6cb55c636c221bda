/** From what was typed and what follows from the book to what the paper is made from; the preview is made from the same. */
import type { NoticeInput } from '#documents/noticeValues.ts';
import type { Occasion } from '#documents/occasion.ts';
import { doubtsOnMeasurements } from '#findings/gear/doubtsOnPaper.ts';
import { peopleOnPaper } from '#findings/peopleOnPaper.ts';
import { respirators } from '#reference/respirators.ts';
import { taskById } from '#reference/tasks.ts';
import { noneWorn, wornText } from '#words/worn.ts';
import type { ReadNotice } from './noticeDraft.ts';
import type { NoticeHere } from './noticeHere.ts';

type Asked = Omit<NoticeInput, keyof Occasion | 'paper' | 'fonts'>;

/** What was worn by the measured worker, by the roster; null where nobody noted it. */
function respiratorOf({ book, measurement }: NoticeHere) {
  const worked = book.workdays.get(measurement.id)?.worked ?? [];
  const id = worked.map(({ respirator }) => respirator).find((worn) => worn !== null);
  if (id === 'none') return noneWorn;
  const found = respirators().find((one) => one.id === id);
  return found === undefined ? null : { en: wornText(found, 'en'), es: wornText(found, 'es') };
}

export function noticeInput(here: NoticeHere, read: ReadNotice): Asked {
  const { measurement, book, owed, next } = here;
  const reported = book.reported.get(measurement.id);
  return {
    measurement,
    siteName: here.siteName,
    tasks: measurement.taskIds.map((id) => {
      const task = taskById(id);
      return { en: task?.en ?? id, es: task?.es ?? id };
    }),
    people: peopleOnPaper(book, read.workerIds),
    workerIds: read.workerIds,
    revision: here.revision,
    why: read.why,
    receivedOn: owed.receivedOn,
    form: read.form,
    places: read.places,
    shownAs: read.shownAs,
    languages: read.languages,
    correctiveAction: read.corrective,
    respirator: respiratorOf(here),
    next: next === null || next.schedule === 'undetermined' ? null : { due: next.due, dueOn: next.dueOn },
    questionsTo: read.questionsTo,
    gearDoubts: doubtsOnMeasurements([measurement], book),
    measuredBy: reported?.fromName ?? null,
  };
}
