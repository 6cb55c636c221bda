/** The hours of work of one worker's day, all pieces of it: typed by supervisor or office from the time sheet. */
import { useState } from 'react';
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import { TimeField } from '#parts/TimeField.tsx';
import type { NewFact } from '#records/fact.ts';
import { newFact } from '#store/newFact.ts';
import { en as words } from '#words/exposure.ts';
import { en as partsWords } from '#words/parts.ts';
import { DayForm, type DayFormProps } from './DayForm.tsx';
import type { DayOn } from './dayOn.ts';
import styles from './exposure.module.css';
import { asksWhich, emptyPiece, type Piece, type PieceText, pieceField, pieceText, readPieces } from './pieces.ts';
import { corrected, useDayForm } from './useDayForm.ts';

interface HoursDraft {
  readonly pieces: readonly PieceText[];
  readonly why: string;
}

const text = words.hours;

export function Hours({ day, over, onDone }: DayFormProps) {
  const said = day.record?.pieces ?? null;
  const initial = { pieces: said?.map((piece) => pieceText(piece, day.zone)) ?? [emptyPiece], why: '' };
  const form = useDayForm<HoursDraft>(day, 'hours', initial, onDone);
  const { pieces, why } = form.draft.value;
  const change = (changed: readonly PieceText[]) => form.draft.set({ pieces: changed, why });

  const factsOf = (read: readonly Piece[]): NewFact[] => {
    const factId = day.record?.piecesFactId;
    if (said === null || !factId)
      return [newFact('workHoursStated.v1', { workdayId: day.workdayId, pieces: [...read] }, form.entry())];
    return corrected(day, factId, '/pieces', { old: said, new: read }, form.entry(why.trim()));
  };
  const submit = () => {
    const read = fieldReader(partsWords);
    const found = readPieces(read, pieces, day.workOn, day.zone);
    if (pieces.length === 0) read.add(null, text.none);
    if (said !== null && why.trim() === '') read.add('why', text.whyMissing);
    if (read.errors.length > 0) return form.setErrors(read.errors);
    return void form.save(factsOf(found));
  };

  return (
    <DayForm
      heading={text.heading}
      over={over}
      errors={form.errors}
      busy={form.busy}
      saveText={text.save}
      onSave={submit}
      onBack={form.leave}
    >
      <p>{text.intro}</p>
      {pieces.map((piece, at) => (
        <PieceLines
          // biome-ignore lint/suspicious/noArrayIndexKey: a piece of work has no other name
          key={at}
          at={at}
          piece={piece}
          day={day}
          errors={form.errors}
          onChange={(changed) => change(pieces.map((each, i) => (i === at ? changed : each)))}
          onRemove={pieces.length > 1 ? () => change(pieces.filter((_, i) => i !== at)) : undefined}
        />
      ))}
      <div>
        <QuietAction onClick={() => change([...pieces, emptyPiece])}>{text.another}</QuietAction>
      </div>
      {said !== null && (
        <TextField
          name="why"
          label={text.why}
          value={why}
          onChange={(typed) => form.draft.set({ pieces, why: typed })}
          error={errorOf(form.errors, 'why')}
        />
      )}
    </DayForm>
  );
}

interface PieceLinesProps {
  readonly at: number;
  readonly piece: PieceText;
  readonly day: DayOn;
  readonly errors: readonly FieldError[];
  readonly onChange: (piece: PieceText) => void;
  readonly onRemove: (() => void) | undefined;
}

function PieceLines({ at, piece, day, errors, onChange, onRemove }: PieceLinesProps) {
  const name = (field: string): string => pieceField(at, field);
  const time = (end: 'from' | 'to') => (
    <div>
      <TimeField
        name={name(end)}
        label={text[end]}
        hint={end === 'to' ? text.toHint : text.fromHint}
        value={piece[end]}
        onChange={(typed) => onChange({ ...piece, [end]: typed, [`${end}Which`]: null })}
        error={errorOf(errors, name(end))}
      />
      {asksWhich(piece, end, day.workOn, day.zone) && (
        <Choice
          name={`${name(end)}-which`}
          label={text.twice(piece[end])}
          options={[
            { value: 'first', label: text.first },
            { value: 'second', label: text.second },
          ]}
          value={piece[`${end}Which`]}
          onChange={(which) => onChange({ ...piece, [`${end}Which`]: which })}
          error={errorOf(errors, `${name(end)}-which`)}
        />
      )}
    </div>
  );
  const [startOpen] = useState(at > 0 || piece.place !== '' || piece.employer !== '');
  const whereOrFor = (field: 'place' | 'employer') => (
    <TextField
      name={name(field)}
      label={text[field]}
      value={piece[field]}
      onChange={(typed) => onChange({ ...piece, [field]: typed })}
      error={errorOf(errors, name(field))}
    />
  );
  return (
    <fieldset className={styles.piece}>
      <legend className={styles.pieceName}>{text.piece(at + 1)}</legend>
      <div className={styles.fromTo}>
        {time('from')}
        {time('to')}
      </div>
      <details className={styles.elsewhere} open={startOpen}>
        <summary>{text.elsewhere}</summary>
        <div>
          {whereOrFor('place')}
          {whereOrFor('employer')}
        </div>
      </details>
      {onRemove !== undefined && (
        <div>
          <QuietAction onClick={onRemove}>{text.remove}</QuietAction>
        </div>
      )}
    </fieldset>
  );
}
