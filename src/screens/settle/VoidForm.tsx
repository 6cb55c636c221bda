/** A sample was marked void on one device, and its result came in on another: a person who knows both says whether it stays void. */
import type { VoidMatter } from '#findings/openMatters.ts';
import { findWorkday } from '#findings/workday.ts';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book, SampleRecord } from '#records/book.ts';
import { useSampleBook } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { formatEstimate } from '#words/quantity.ts';
import { en } from '#words/settle.ts';
import { valueText } from '#words/valueText.ts';
import { lineOf } from './lineOf.ts';
import { SettleForm } from './SettleForm.tsx';
import { envelopeOf, namingOf, type Settling, writtenBy } from './settling.ts';

const words = en.voidAgainstResult;

interface Draft {
  readonly stands: 'stays' | 'counts' | null;
  readonly why: string;
}

/** The day's figure if the sample stays void, or if it counts again. */
function dayText(sample: SampleRecord, book: Book, counts: boolean): string {
  const as: SampleRecord = counts ? { ...sample, voided: null, voidAgainstResult: false } : sample;
  const { twa8 } = findWorkday(sample.workdayId ?? '', { ...book, samples: new Map(book.samples).set(sample.id, as) });
  return words.day(twa8 === null ? words.noFigure : formatEstimate(twa8.estimate, twa8.unit));
}

export function VoidForm({ settling }: { readonly settling: Settling<VoidMatter> }) {
  const { matter, book, facts } = settling;
  const around = useSampleBook(matter.sampleId);
  const sample = (around ?? book).samples.get(matter.sampleId);
  const day = (counts: boolean): string => (sample?.workdayId && around ? ` ${dayText(sample, around, counts)}` : '');
  const why = envelopeOf(matter.voidFactId, facts)?.why ?? matter.voidWhy ?? en.conflict.noReason;
  const blank: Draft = { stands: null, why: '' };
  return (
    <SettleForm
      settling={settling}
      heading={words.heading}
      action={words.action}
      meanwhile={lineOf(matter, settling).meanwhile}
      blank={blank}
      build={({ stands }, read, entry) => {
        const chosen = read.chosen('stands', words.which, stands);
        const { sampleId, voidFactId, resultFactIds } = matter;
        const body = { sampleId, voidFactId, stands: chosen !== 'counts', knew: [...resultFactIds].slice(-50) };
        return [newFact('voidReviewed.v1', body, entry)];
      }}
    >
      {({ stands }, change, errors) => (
        <>
          <Lines>
            <Line detail={writtenBy(matter.voidFactId, settling)}>{words.voided(why)}</Line>
            {(sample?.results ?? []).map((result) => (
              <Line key={result.factId} detail={writtenBy(result.factId, settling)}>
                {words.result(result.reportNumber, valueText('/mass', result.mass, namingOf(settling)))}
              </Line>
            ))}
          </Lines>
          {sample?.workdayId === null && <p>{words.noDay}</p>}
          <Choice
            name="stands"
            label={words.which}
            options={[
              { value: 'stays', label: words.stays, hint: `${words.staysMeans}${day(false)}` },
              { value: 'counts', label: words.counts, hint: `${words.countsMeans}${day(true)}` },
            ]}
            value={stands}
            onChange={(value) => change({ stands: value })}
            error={errorOf(errors, 'stands')}
          />
        </>
      )}
    </SettleForm>
  );
}
