/** Who does this work, and which of them are measured: all, drawn by lot, or the one expected to breathe most. */
import type { CrewSample } from '#findings/season/crewSample.ts';
import { crewSample } from '#findings/season/crewSample.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { drawBelow } from '#store/device.ts';
import { en } from '#words/planScreen.ts';
import { formatQuantity } from '#words/quantity.ts';
import { AddWorkers } from './AddWorkers.tsx';
import type { PlanFields } from './fields.ts';
import styles from './plan.module.css';
import { crewCountOf, crewOf, isDrawn, slotsOf } from './planDraft.ts';

const words = en.who;

const evenParts = 65_536;

export function Whom(fields: PlanFields) {
  const { book, draft, onChange, errors } = fields;
  const people = [...book.people.values()].sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
  const choices = ['all', 'random', 'highest'] as const;
  return (
    <section className={styles.part}>
      <h2>{words.heading}</h2>
      {people.length === 0 ? (
        <p>{words.nobodyKnown}</p>
      ) : (
        <Checklist
          name="crew"
          label={words.crew}
          hint={words.crewHint}
          options={people.map(({ id, name, employer }) => ({ value: id, label: name, hint: employer ?? undefined }))}
          value={draft.crew}
          onChange={(crew) => onChange({ crew, draws: [] })}
          error={errorOf(errors, 'crew')}
        />
      )}
      <AddWorkers {...fields} hasError={people.length === 0} />
      <TextField
        name="crewCount"
        label={words.crewCount}
        hint={words.crewCountHint}
        kind="digits"
        value={draft.crewCount}
        onChange={(crewCount) => onChange({ crewCount, draws: [] })}
        error={errorOf(errors, 'crewCount')}
      />
      <Choice
        name="choice"
        label={words.choice}
        options={choices.map((value) => ({ value, label: words.choices[value], hint: words.choiceHints[value] }))}
        value={draft.choice}
        onChange={(choice) => onChange({ choice })}
        error={errorOf(errors, 'choice')}
      />
      {draft.choice === 'random' && <Lot {...fields} />}
      {draft.choice === 'highest' && <Highest {...fields} />}
      <Chosen {...fields} />
    </section>
  );
}

const nameOf = ({ book, draft }: PlanFields, id: string): string =>
  book.people.get(id)?.name ?? draft.added.find((each) => each.id === id)?.name.trim() ?? '';

/** The rule with its numbers; then the lot, drawn by the device and kept as drawn. */
function Lot({ draft, onChange }: PlanFields) {
  const crew = crewOf(draft);
  const crewCount = crewCountOf(draft);
  if (crewCount === 0) return null;
  const rule: CrewSample = crewSample(crewCount);
  const draw = () => onChange({ draws: crew.map(() => drawBelow(evenParts) / evenParts) });
  if (rule.everyone) return <p role="status">{words.everyoneSmall(crewCount)}</p>;
  return (
    <>
      <p role="status">{words.drawn(rule.sampleCount, crewCount, formatQuantity(rule.chancePct, '%'))}</p>
      {rule.working !== null && (
        <details>
          <summary>{words.working}</summary>
          <WorkingView working={rule.working} />
        </details>
      )}
      {crewCount > crew.length ? (
        <p>{words.drawNames(crewCount - crew.length)}</p>
      ) : (
        <div>
          <QuietAction onClick={draw}>{isDrawn(draft) ? words.drawAgain : words.draw}</QuietAction>
        </div>
      )}
    </>
  );
}

function Highest(fields: PlanFields) {
  const { draft, onChange, errors } = fields;
  return (
    <>
      <SelectField
        name="highest"
        label={words.highest}
        options={crewOf(draft).map((id) => ({ value: id, label: nameOf(fields, id) }))}
        value={draft.highestId ?? ''}
        onChange={(highestId) => onChange({ highestId })}
        error={errorOf(errors, 'highest')}
      />
      <TextField
        name="reason"
        label={words.reason}
        hint={words.reasonHint}
        rows={3}
        value={draft.reason}
        onChange={(reason) => onChange({ reason })}
        error={errorOf(errors, 'reason')}
      />
    </>
  );
}

/** Who it comes to, by name, while it is being said. */
function Chosen(fields: PlanFields) {
  const slots = slotsOf(fields.draft, fields.today);
  if (slots === null || slots.workerIds.length === 0) return null;
  const names = slots.workerIds.map((id) => nameOf(fields, id)).filter((name) => name !== '');
  return (
    <p role="status">
      <strong>{words.chosen(names)}</strong> {slots.unnamedCount > 0 && words.unnamed(slots.unnamedCount)}
    </p>
  );
}
