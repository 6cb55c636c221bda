/** What is in the box and what is asked: the column beside the sheet. */

import { samplesOfBox } from '#findings/gaps.ts';
import { Line, Lines, Particulars } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book, BoxRecord, SampleRecord } from '#records/book.ts';
import { methodById } from '#reference/methods.ts';
import { en } from '#words/box.ts';
import styles from './box.module.css';

interface BoxInsideProps {
  readonly box: BoxRecord;
  readonly book: Book;
}

const words = en.pack;
const names = en.values;
const answer = (yes: boolean): string => (yes ? words.answers.yes : words.answers.no);

export function BoxInside({ box, book }: BoxInsideProps) {
  const { packed } = box;
  const who = ({ sampleKind, workerId }: SampleRecord): string =>
    sampleKind === 'blank' ? words.blank : (book.people.get(workerId ?? '')?.name ?? '');
  return (
    <div className={styles.section}>
      <Lines heading={en.box.inside}>
        {samplesOfBox(box, book).map((sample) => (
          <Line key={sample.id} to={`/sample/${sample.id}`}>
            {words.sample(sample.sampleNumber, who(sample))}
          </Line>
        ))}
      </Lines>
      <h2>{en.box.asked}</h2>
      <Particulars
        items={[
          [names.analysis, packed.analysis],
          [names.method, packed.methodId ? (methodById(packed.methodId)?.title ?? packed.methodId) : words.noMethod],
          [
            names.reportingLimitUg,
            packed.reportingLimitUg === null ? en.absent.notStated : en.limitText(packed.reportingLimitUg),
          ],
          [names.includeWallDeposit, answer(packed.includeWallDeposit)],
          [names.callBeforeReanalysis, answer(packed.callBeforeReanalysis)],
          [names.turnaround, packed.turnaround],
          [names.workersShownAs, words.shownAsChoices[packed.workersShownAs]],
          [names.samplerName, book.people.get(packed.samplerId)?.name ?? en.absent.notStated],
        ]}
      />
      <div>
        <QuietAction to={`/box/${box.id}/change`}>{en.box.change}</QuietAction>
      </div>
    </div>
  );
}
