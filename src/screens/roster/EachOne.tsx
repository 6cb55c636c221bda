/** What each one does: a line a worker as suggested, which opens to be changed; before them the tasks that hold for everyone. */
import { useState } from 'react';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TaskPicker } from '#parts/TaskPicker.tsx';
import { everydayTasks } from '#reference/tasks.ts';
import { en as words } from '#words/roster.ts';
import styles from './roster.module.css';
import { here, type RosterDay, type RosterDraft, workOf } from './rosterDraft.ts';
import { WorkLines } from './WorkLines.tsx';
import { taskNames, workDetail } from './work.ts';

export interface EachOneProps {
  readonly day: RosterDay;
  readonly draft: RosterDraft;
  readonly onChange: (draft: RosterDraft) => void;
  readonly errors: readonly FieldError[];
}

const usualKey = 'usual';

export function EachOne({ day, draft, onChange, errors }: EachOneProps) {
  const { shiftId, usual, book } = day;
  const [opened, setOpened] = useState<string | null>(null);
  const everyone = here(draft, book);
  if (everyone.length === 0) return null;
  const forAll = draft.usual ?? { taskIds: usual, find: '' };
  const work = (id: string) => workOf(id, draft, shiftId, usual, book);
  const near = [...new Set([...forAll.taskIds, ...everyone.flatMap(({ id }) => work(id).taskIds)])];
  const isOpen = (id: string) => opened === id || errorOf(errors, `work-${id}`) !== undefined;
  const asksForAll = forAll.taskIds.length === 0 && everyone.some(({ id }) => work(id).taskIds.length === 0);
  return (
    <>
      {(asksForAll || opened === usualKey) && (
        <TaskPicker
          name={usualKey}
          label={words.usual}
          hint={words.usualHint}
          tasks={everydayTasks()}
          nearIds={near}
          taskIds={forAll.taskIds}
          find={forAll.find}
          onChange={(part) => {
            setOpened(usualKey);
            onChange({ ...draft, usual: { ...forAll, ...part } });
          }}
          error={undefined}
        />
      )}
      <Lines heading={words.each}>
        {forAll.taskIds.length > 0 && (
          <Line key={usualKey} detail={words.usualHint} onClick={() => setOpened(usualKey)}>
            {words.usualLine(taskNames(forAll.taskIds))}
          </Line>
        )}
        {everyone.map(({ id, name }) => (
          <Line key={id} detail={workDetail(work(id), book)} onClick={() => setOpened(opened === id ? null : id)}>
            {words.workLine(name, taskNames(work(id).taskIds))}
          </Line>
        ))}
      </Lines>
      {everyone
        .filter(({ id }) => isOpen(id))
        .map(({ id, name }) => (
          <fieldset key={id} aria-label={name} className={styles.own}>
            <WorkLines
              name={`work-${id}`}
              worker={name}
              value={work(id)}
              onChange={(own) => onChange({ ...draft, own: { ...draft.own, [id]: own } })}
              nearIds={near}
              book={book}
              error={errorOf(errors, `work-${id}`)}
            />
            {opened === id && (
              <div>
                <QuietAction onClick={() => setOpened(null)}>{words.close}</QuietAction>
              </div>
            )}
          </fieldset>
        ))}
    </>
  );
}
