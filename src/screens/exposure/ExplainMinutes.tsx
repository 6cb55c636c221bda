/** Says what minutes without a sample were: away with a reason, the same as a sample with a reason, or that nobody knows. */
import { instantsOfWallTime, wallTimeOf } from '#core/calendar.ts';
import type { Segment } from '#findings/workday.ts';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { TextField } from '#parts/TextField.tsx';
import { TimeField } from '#parts/TimeField.tsx';
import { newFact } from '#store/newFact.ts';
import { en as words } from '#words/exposure.ts';
import { en as partsWords } from '#words/parts.ts';
import { DayForm, type DayFormProps } from './DayForm.tsx';
import type { DayOn } from './dayOn.ts';
import styles from './exposure.module.css';
import { useDayForm } from './useDayForm.ts';

interface ExplainDraft {
  readonly from: string;
  readonly to: string;
  readonly as: 'away' | 'sameAs' | 'unknown' | null;
  readonly sampleId: string | null;
  readonly reason: string;
}

const text = words.explain;

export function ExplainMinutes({ day, over, onDone, segment }: DayFormProps & { readonly segment: Segment }) {
  const [from, to] = [day.clock(segment.fromAt), day.clock(segment.toAt)];
  const form = useDayForm<ExplainDraft>(
    day,
    `minutes/${segment.fromAt}`,
    { from, to, as: null, sampleId: null, reason: '' },
    onDone,
  );
  const { value, set } = form.draft;
  const choices = day.samples.filter(({ putOn }) => putOn !== null);
  const sampleId = value.sampleId ?? (choices.length === 1 ? (choices[0]?.id ?? null) : null);

  const submit = () => {
    const read = fieldReader(partsWords);
    const fromAt = readEdge(read, 'from', value.from, segment, day);
    const toAt = readEdge(read, 'to', value.to, segment, day);
    const as = read.chosen('as', text.as, value.as);
    const reason = read.text('reason', text.reason, value.reason, { optional: true });
    if (as !== null && as !== 'unknown' && reason === null) read.add('reason', text.reasonMissing);
    if (as === 'sameAs' && sampleId === null) read.add('sample', partsWords.choose(text.sample));
    if (fromAt !== null && toAt !== null && toAt <= fromAt) read.add('to', text.order);
    if (fromAt === null || toAt === null || as === null || read.errors.length > 0) return form.setErrors(read.errors);
    const body = {
      workdayId: day.workdayId,
      fromAt,
      toAt,
      as,
      sampleId: as === 'sameAs' ? sampleId : null,
      reason,
    };
    return void form.save([newFact('minutesExplained.v1', body, form.entry())], { reason: 'reason', toAt: 'to' });
  };

  return (
    <DayForm
      heading={text.heading(from, to)}
      over={over}
      errors={form.errors}
      busy={form.busy}
      saveText={text.save}
      onSave={submit}
      onBack={form.leave}
    >
      <p>{text.length(segment.durationMin)}</p>
      <Choice
        name="as"
        label={text.as}
        options={(['away', 'sameAs', 'unknown'] as const).map((as) => ({ value: as, ...text.options[as] }))}
        value={value.as}
        onChange={(as) => set({ ...value, as })}
        error={errorOf(form.errors, 'as')}
      />
      {value.as === 'sameAs' && (
        <Choice
          name="sample"
          label={text.sample}
          options={choices.map(({ id, sampleNumber }) => ({ value: id, label: sampleNumber }))}
          value={sampleId}
          onChange={(chosen) => set({ ...value, sampleId: chosen })}
          error={errorOf(form.errors, 'sample')}
        />
      )}
      <TextField
        name="reason"
        label={text.reason}
        value={value.reason}
        onChange={(reason) => set({ ...value, reason })}
        error={errorOf(form.errors, 'reason')}
      />
      <div className={styles.fromTo}>
        <TimeField
          name="from"
          label={text.from}
          hint={words.hours.fromHint}
          value={value.from}
          onChange={(typed) => set({ ...value, from: typed })}
          error={errorOf(form.errors, 'from')}
        />
        <TimeField
          name="to"
          label={text.to}
          hint={words.hours.fromHint}
          value={value.to}
          onChange={(typed) => set({ ...value, to: typed })}
          error={errorOf(form.errors, 'to')}
        />
      </div>
    </DayForm>
  );
}

/** The instant of a wall time that lies within the stretch; the untouched edge is the stretch's own, to the second. */
function readEdge(
  read: FieldReader,
  end: 'from' | 'to',
  typed: string,
  segment: Segment,
  { zone, clock }: DayOn,
): string | null {
  const own = end === 'from' ? segment.fromAt : segment.toAt;
  const time = read.clock(end, text[end], typed);
  if (time === null || time === clock(own)) return time === null ? null : own;
  const days = [...new Set([segment.fromAt, segment.toAt].map((at) => wallTimeOf(at, zone).day))];
  const meanings = days.map((day) => instantsOfWallTime(day, time, zone));
  const instants = meanings.flatMap((meaning) => {
    if (meaning.kind === 'once') return [meaning.at];
    return meaning.kind === 'twice' ? [meaning.first.at, meaning.second.at] : [];
  });
  const within = instants.find((at) => segment.fromAt <= at && at <= segment.toAt);
  return within ?? read.add(end, text.outside(clock(segment.fromAt), clock(segment.toAt)));
}
