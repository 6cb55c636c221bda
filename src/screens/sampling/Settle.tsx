/** Two corrections made without knowledge of each other: a person says which value is right, and why. */
import { useSearch } from 'wouter';
import { checksOfSample } from '#findings/checks.ts';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf } from '#parts/ErrorSummary.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/story.ts';
import { DeedForm } from './DeedForm.tsx';
import type { Sampling } from './useSampling.ts';
import { labelOf, valueText } from './valueText.ts';

const words = en.settling;
interface SettleDraft {
  readonly chosen: string | null;
  readonly why: string;
}
const blank: SettleDraft = { chosen: null, why: '' };

export function Settle({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book, place } = sampling;
  const asked = new URLSearchParams(useSearch());
  const { before, after } = checksOfSample(sample, book);
  const open = [sample, before, after].flatMap((record) =>
    (record?.conflicts ?? []).map((conflict) => ({ conflict, key: record?.key ?? sample.key })),
  );
  const found = open.find(
    ({ conflict }) => conflict.factId === asked.get('fact') && conflict.path === asked.get('path'),
  );
  if (found === undefined)
    return (
      <Page heading={words.heading} back={`/sample/${sample.id}`}>
        <ErrorSummary errors={[{ field: null, text: words.gone }]} />
      </Page>
    );
  const { factId, path, candidates, standing } = found.conflict;
  const label = labelOf(path);
  const nameOf = (by: string | null): string => book.people.get(by ?? '')?.name ?? '';
  return (
    <DeedForm
      sampling={sampling}
      name={`settle/${factId}${path}`}
      heading={words.heading}
      action={words.action}
      when="now"
      blank={blank}
      fieldByName={{ why: 'why' }}
      build={({ chosen, why }, read, entry) => {
        const picked = read.chosen('chosen', label, chosen) ?? factId;
        if (why.trim() === '') read.add('why', en.correcting.whyMissing);
        const reason = read.text('why', words.why, why, { optional: true, most: 2000 });
        const over = candidates.map(({ correctionId }) => correctionId);
        const body = { replaces: factId, path, chosen: picked, over };
        return [newFact('correctionSettled.v1', body, { ...entry, why: reason, about: [found.key] })];
      }}
    >
      {({ chosen, why }, change, errors) => (
        <>
          <Choice
            name="chosen"
            label={words.which(label)}
            options={candidates.map(({ correctionId, value, by }) => ({
              value: correctionId,
              label: words.by(valueText(path, value, book, place.zone), nameOf(by)),
              hint: correctionId === standing ? words.stands : undefined,
            }))}
            value={chosen}
            onChange={(value) => change({ chosen: value })}
            error={errorOf(errors, 'chosen')}
          />
          <TextField
            name="why"
            label={words.why}
            rows={2}
            value={why}
            onChange={(text) => change({ why: text })}
            error={errorOf(errors, 'why')}
          />
        </>
      )}
    </DeedForm>
  );
}
