/** Two corrections of one value, or two statements of one thing: both with who wrote them, and a person says which is right. */
import type { ConflictMatter } from '#findings/openMatters.ts';
import { Choice, type ChoiceOption } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { readFact, type StoredFact } from '#records/canonical.ts';
import { segmentsOf, valueAt } from '#records/pointer.ts';
import { newFact } from '#store/newFact.ts';
import { labelOf } from '#words/fieldNames.ts';
import { en } from '#words/settle.ts';
import { momentText, valueText } from '#words/valueText.ts';
import { lineOf } from './lineOf.ts';
import { SettleForm } from './SettleForm.tsx';
import { envelopeOf, namingOf, type Settling, writtenBy } from './settling.ts';

const words = en.conflict;

interface Draft {
  readonly chosen: string | null;
  readonly why: string;
}

/** The value as it was written first, when no candidate is that first entry itself. */
function firstValue({ conflict }: ConflictMatter, facts: readonly StoredFact[]): { readonly value: unknown } | null {
  const { factId, path, candidates } = conflict;
  const stored = facts.find(({ id }) => id === factId);
  const read = stored && readFact(stored.text);
  if (read?.kind !== 'known' || candidates.some(({ correctionId }) => correctionId === factId)) return null;
  return valueAt({ ...read.fact.body, happened: { at: read.fact.happened.at } }, segmentsOf(path));
}

function optionsOf(settling: Settling<ConflictMatter>): readonly ChoiceOption[] {
  const { matter, facts } = settling;
  const { factId, path, candidates, standing } = matter.conflict;
  const naming = namingOf(settling);
  const hint = (id: string, ...more: readonly string[]): string => {
    const fact = envelopeOf(id, facts);
    const why = fact === undefined ? [] : [words.because(fact.why ?? words.noReason)];
    const stands = id === standing ? [words.stands] : [];
    return [writtenBy(id, settling), ...(id === factId && !fact?.why ? [] : why), ...more, ...stands].join('; ');
  };
  const first = firstValue(matter, facts);
  return [
    ...candidates.map(({ correctionId, value }) => ({
      value: correctionId,
      label: valueText(path, value, naming),
      hint: hint(correctionId),
    })),
    ...(first === null
      ? []
      : [{ value: factId, label: valueText(path, first.value, naming), hint: hint(factId, words.asFirst) }]),
  ];
}

/** When the thing itself happened that two people describe differently. */
function happenedAt(factId: string, facts: readonly StoredFact[]): string | null {
  const stored = facts.find(({ id }) => id === factId);
  const read = stored && readFact(stored.text);
  return read?.kind === 'known' ? read.fact.happened.at : null;
}

export function ConflictForm({ settling }: { readonly settling: Settling<ConflictMatter> }) {
  const { matter, facts, zone } = settling;
  const { factId, path, candidates } = matter.conflict;
  const label = labelOf(path);
  const at = path === '/happened/at' ? null : happenedAt(factId, facts);
  const blank: Draft = { chosen: null, why: '' };
  return (
    <SettleForm
      settling={settling}
      heading={words.heading(label)}
      action={words.action}
      meanwhile={lineOf(matter, settling).meanwhile}
      blank={blank}
      fieldByName={{ chosen: 'chosen' }}
      build={({ chosen }, read, entry) => {
        const picked = read.chosen('chosen', label, chosen) ?? factId;
        const over = candidates.map(({ correctionId }) => correctionId);
        const body = { replaces: factId, path, chosen: picked, over };
        return [newFact('correctionSettled.v1', body, { ...entry, about: [...matter.recordKeys] })];
      }}
    >
      {({ chosen }, change, errors) => (
        <>
          {at !== null && (
            <p>
              {label}, {words.happened(momentText(at, zone))}
            </p>
          )}
          <Choice
            name="chosen"
            label={words.which}
            options={optionsOf(settling)}
            value={chosen}
            onChange={(value) => change({ chosen: value })}
            error={errorOf(errors, 'chosen')}
          />
        </>
      )}
    </SettleForm>
  );
}
