/** Who wears a pump: the planned ones first; and of each, pump, lot, work, and how long it must be worn. */
import { useState } from 'react';
import { namesIn } from '#findings/naming.ts';
import { leastMinutes } from '#findings/season/leastMinutes.ts';
import { plannedOn } from '#findings/season/plannedOn.ts';
import { dayIn, siteIn } from '#findings/season/tomorrow.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TaskPicker } from '#parts/TaskPicker.tsx';
import { everydayTasks } from '#reference/tasks.ts';
import { tasksInWords } from '#words/groupInWords.ts';
import { en as planWords } from '#words/planScreen.ts';
import { en as words } from '#words/tomorrowScreen.ts';
import { type WearerDraft, wearerFor } from './dayDraft.ts';
import type { DayFields } from './fields.ts';
import { inUse, lotLabel, pumpLabel } from './gearLabels.ts';
import styles from './tomorrow.module.css';

export function Wearers(fields: DayFields) {
  const { shiftId, book, draft, onChange, errors } = fields;
  const planned = plannedOn(book, dayIn(shiftId), siteIn(shiftId));
  const hintOf = (id: string): string | undefined => {
    const plan = planned.find(({ workerId }) => workerId === id);
    if (plan === undefined) return undefined;
    if (plan.missed !== null) return words.missed(planWords.slot.missed[plan.missed.because]);
    return words.planned(tasksInWords(plan.taskIds, namesIn(book)));
  };
  const isPlanned = (id: string): boolean => planned.some(({ workerId }) => workerId === id);
  const people = [...book.people.values()].sort(
    (a, b) =>
      Number(isPlanned(b.id)) - Number(isPlanned(a.id)) || a.name.localeCompare(b.name, 'en', { numeric: true }),
  );
  const worn = new Map(draft.wearers.map((wearer) => [wearer.workerId, wearer]));
  if (people.length === 0)
    return (
      <section id="wearers">
        <p>{words.noPeople}</p>
        <Lines>
          <Line to="/plan">{words.toPlan}</Line>
        </Lines>
      </section>
    );
  return (
    <>
      <Checklist
        name="wearers"
        label={words.who}
        options={people.map(({ id, name }) => ({ value: id, label: name, hint: hintOf(id) }))}
        value={[...worn.keys()]}
        onChange={(ids) => onChange({ wearers: ids.map((id) => worn.get(id) ?? wearerFor(id, shiftId, book)) })}
        error={errorOf(errors, 'wearers')}
      />
      {draft.wearers.map((wearer) => (
        <WearerLines
          key={wearer.workerId}
          {...fields}
          wearer={wearer}
          onWearer={(part) =>
            onChange({
              wearers: draft.wearers.map((each) => (each.workerId === wearer.workerId ? { ...each, ...part } : each)),
            })
          }
        />
      ))}
      {book.pumps.size === 0 && (
        <Lines>
          <Line to="/lists" detail={words.noGear}>
            {words.toLists}
          </Line>
        </Lines>
      )}
    </>
  );
}

/** Stands for nothing chosen, in the phone's own picker. */
const open = '-';

interface WearerLinesProps extends DayFields {
  readonly wearer: WearerDraft;
  readonly onWearer: (part: Partial<WearerDraft>) => void;
}

function WearerLines({ shiftId, book, wearer, onWearer, errors }: WearerLinesProps) {
  const { workerId, taskIds } = wearer;
  const name = book.people.get(workerId)?.name ?? '';
  const pick = (id: string): string | null => (id === open ? null : id);
  return (
    <section className={styles.part}>
      <h2>{name}</h2>
      <Work book={book} wearer={wearer} onWearer={onWearer} error={errorOf(errors, `work-${workerId}`)} name={name} />
      <div className={styles.two}>
        <SelectField
          name={`pump-${workerId}`}
          label={words.pump(name)}
          options={[
            { value: open, label: words.open },
            ...inUse(book.pumps, wearer.pumpId).map((pump) => ({
              value: pump.id,
              label: pumpLabel(pump, dayIn(shiftId)),
            })),
          ]}
          value={wearer.pumpId ?? open}
          onChange={(id) => onWearer({ pumpId: pick(id) })}
        />
        <SelectField
          name={`lot-${workerId}`}
          label={words.lot(name)}
          options={[
            { value: open, label: words.open },
            ...inUse(book.lots, wearer.lotId).map((lot) => ({ value: lot.id, label: lotLabel(lot, dayIn(shiftId)) })),
          ]}
          value={wearer.lotId ?? open}
          onChange={(id) => onWearer({ lotId: pick(id) })}
        />
      </div>
      {taskIds.length > 0 && <Least wearer={wearer} shiftId={shiftId} book={book} />}
    </section>
  );
}

interface WorkProps extends Pick<WearerLinesProps, 'book' | 'wearer' | 'onWearer'> {
  readonly name: string;
  readonly error: string | undefined;
}

function Work({ book, wearer, onWearer, name, error }: WorkProps) {
  const { workerId, taskIds, jobClassificationId } = wearer;
  const [changing, setChanging] = useState(false);
  const [find, setFind] = useState('');
  if (!changing && taskIds.length > 0 && error === undefined)
    return (
      <>
        <p>
          {words.workIs(
            tasksInWords(taskIds, namesIn(book)),
            book.jobClassifications.get(jobClassificationId ?? '')?.name ?? null,
          )}
        </p>
        <div>
          <QuietAction onClick={() => setChanging(true)}>{words.changeWork}</QuietAction>
        </div>
      </>
    );
  return (
    <TaskPicker
      name={`work-${workerId}`}
      label={words.work(name)}
      tasks={everydayTasks()}
      nearIds={[...book.samples.values()].flatMap((sample) => sample.taskIds)}
      taskIds={taskIds}
      find={find}
      onChange={(part) => {
        if (part.find !== undefined) setFind(part.find);
        // Other work than the plan's is no measurement of the plan: it is worn, and the plan stays to do.
        if (part.taskIds !== undefined) onWearer({ taskIds: part.taskIds });
      }}
      error={error}
    />
  );
}

function Least({ wearer, shiftId, book }: Pick<WearerLinesProps, 'wearer' | 'shiftId' | 'book'>) {
  if (wearer.planId === null) return null;
  const least = leastMinutes(wearer.planId, dayIn(shiftId), siteIn(shiftId), book);
  if (least.kind === 'notKnown') return <p className={styles.quiet}>{words.leastNotKnown}</p>;
  return <p>{least.minutes === null ? words.leastNever : words.least(least.minutes)}</p>;
}
