/** One number on two cassettes: which of them gets another one, with the next free number put in, to be written on the cassette. */
import type { SameNumberMatter } from '#findings/openMatters.ts';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { Notice } from '#parts/Notice.tsx';
import { TextField } from '#parts/TextField.tsx';
import { checkSampleNumber } from '#records/sampleNumber.ts';
import { useNextNumber } from '#store/hooks/useNextNumber.ts';
import { newFact } from '#store/newFact.ts';
import { sampleName } from '#words/recordNames.ts';
import { en } from '#words/settle.ts';
import { lineOf } from './lineOf.ts';
import { SettleForm } from './SettleForm.tsx';
import { type Settling, writtenBy } from './settling.ts';

const words = en.sameNumber;

interface Draft {
  readonly sampleId: string | null;
  /** null: as put in. */
  readonly number: string | null;
  readonly why: string;
}

function readNumber(typed: string, shared: string, read: FieldReader): string {
  const checked = checkSampleNumber(typed);
  if (checked.kind === 'wrong') read.add('number', words.mistakes[checked.mistake]);
  else if (checked.sampleNumber === shared) read.add('number', words.same);
  else return checked.sampleNumber;
  return shared;
}

export function NumberForm({ settling }: { readonly settling: Settling<SameNumberMatter> }) {
  const { matter, book } = settling;
  const next = useNextNumber() ?? '';
  const samples = matter.sampleIds.flatMap((id) => book.samples.get(id) ?? []);
  const blank: Draft = { sampleId: null, number: null, why: '' };
  const beganBy = (sampleId: string): string => book.samples.get(sampleId)?.preparedFactId ?? '';
  return (
    <SettleForm
      settling={settling}
      heading={words.heading(matter.sampleNumber)}
      action={words.action}
      meanwhile={lineOf(matter, settling).meanwhile}
      blank={blank}
      fieldByName={{ new: 'number', sampleNumber: 'number' }}
      build={({ sampleId, number }, read, entry) => {
        const chosen = read.chosen('sampleId', words.which, sampleId) ?? '';
        const right = readNumber(number ?? next, matter.sampleNumber, read);
        const body = {
          replaces: beganBy(chosen),
          path: '/sampleNumber',
          old: matter.sampleNumber,
          new: right,
          supersedes: null,
        };
        return [newFact('valueCorrected.v1', body, { ...entry, about: [`sample:${chosen}`] })];
      }}
    >
      {({ sampleId, number }, change, errors) => (
        <>
          <p>{words.intro}</p>
          <Choice
            name="sampleId"
            label={words.which}
            options={samples.map((sample) => ({
              value: sample.id,
              label: [sampleName(sample, book), book.sites.get(sample.siteId)?.name].filter(Boolean).join(', '),
              hint: writtenBy(beganBy(sample.id), settling),
            }))}
            value={sampleId}
            onChange={(value) => change({ sampleId: value })}
            error={errorOf(errors, 'sampleId')}
          />
          <TextField
            name="number"
            kind="digits"
            label={words.newNumber}
            hint={words.newNumberHint}
            value={number ?? next}
            onChange={(typed) => change({ number: typed })}
            error={errorOf(errors, 'number')}
          />
          <Notice>{words.writeIt}</Notice>
        </>
      )}
    </SettleForm>
  );
}
