/** Whose cassette it is, what the keyed figure amounts to, and how far the laboratory's own figures are from ours. */
import { laboratoryDifferencePct } from '#findings/practice.ts';
import type { SampleFinding } from '#findings/sample.ts';
import type { SampleRecord } from '#records/book.ts';
import { useRegisters, useSampleBook } from '#store/hooks.ts';
import { formatDay, formatEstimate, formatQuantity } from '#words/quantity.ts';
import { en as words } from '#words/results.ts';
import { lineFinding } from './lineFinding.ts';
import styles from './results.module.css';
import type { ReportText, RowText } from './resultsDraft.ts';

export interface LineMeaningProps {
  readonly sample: SampleRecord;
  readonly row: RowText;
  readonly report: ReportText;
  readonly today: string;
}

export function LineMeaning({ sample, row, report, today }: LineMeaningProps) {
  const book = useSampleBook(sample.id);
  const registers = useRegisters();
  const day = formatDay(sample.workOn, 'en', 'weekday');
  const worker = registers?.people.byId.get(sample.workerId ?? '')?.name ?? '';
  const finding = book ? lineFinding(sample.id, book, report, row, today) : null;
  const earlier = sample.results.at(-1);
  return (
    <div className={styles.meaning} role="status">
      <p>
        <strong>{sample.sampleKind === 'blank' ? words.rows.blank(day) : words.rows.whose(worker, day)}</strong>
        {finding && sample.sampleKind === 'air' && `: ${sentencesOf(finding)}`}
      </p>
      {earlier && (
        <p>
          {words.alreadyIn(
            earlier.reportNumber,
            earlier.mass.kind === 'measured'
              ? formatQuantity(earlier.mass.massUg, 'µg')
              : `<${formatQuantity(earlier.mass.reportingLimitUg, 'µg')}`,
          )}
        </p>
      )}
      {sample.voided !== null && <p>{words.isVoid}</p>}
    </div>
  );
}

function sentencesOf({ volume, concentration, ...finding }: SampleFinding): string {
  const shown = concentration ?? finding.judged;
  const ours =
    volume === null || shown === null
      ? words.oursNoVolume
      : words.ours(formatEstimate(shown.estimate, shown.unit), formatEstimate(volume.estimate, volume.unit));
  const apart = finding.laboratoryConcentrationDifferencePct ?? finding.laboratoryVolumeDifferencePct;
  if (apart === null) return `${ours}.`;
  const far = Math.abs(apart) > laboratoryDifferencePct.value;
  return `${ours}; ${far ? words.laboratoryDiffers(apart) : words.laboratoryAgrees(apart)}.`;
}
