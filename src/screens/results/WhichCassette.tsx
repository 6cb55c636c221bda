/** One number on more than one cassette: whose it was, which day and where, so that the office can tell from the report or the sheet. */
import { Choice } from '#parts/Choice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { SampleRecord } from '#records/book.ts';
import { useRegisters } from '#store/hooks.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/results.ts';
import { chooserName, type RowText } from './resultsDraft.ts';

export interface WhichCassetteProps {
  readonly row: RowText;
  readonly samples: readonly SampleRecord[];
  readonly error: string | undefined;
  readonly onChoose: (sampleId: string) => void;
}

export function WhichCassette({ row, samples, error, onChoose }: WhichCassetteProps) {
  const registers = useRegisters();
  const labelOf = ({ sampleKind, workerId, workOn, siteId }: SampleRecord): string => {
    const day = formatDay(workOn, 'en', 'weekday');
    const worker = registers?.people.byId.get(workerId ?? '')?.name ?? '';
    const whose = sampleKind === 'blank' ? words.rows.blank(day) : words.rows.whose(worker, day);
    return words.chooser.cassette(whose, registers?.sites.byId.get(siteId)?.name ?? '');
  };
  const number = samples[0]?.sampleNumber ?? '';
  return (
    <>
      <Choice
        name={chooserName(row)}
        label={words.chooser.label(number)}
        hint={words.chooser.doubt}
        options={samples.map((sample) => ({ value: sample.id, label: labelOf(sample) }))}
        value={row.sampleId ?? null}
        onChange={onChoose}
        error={error}
      />
      <div>
        <QuietAction to={`/settle/${encodeURIComponent(`number ${number}`)}`}>{words.chooser.settle}</QuietAction>
      </div>
    </>
  );
}
