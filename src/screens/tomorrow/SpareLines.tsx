/** What lies ready beside: a spare pump, spare cassettes, and who charges the pumps. */
import { dayIn } from '#findings/season/tomorrow.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en } from '#words/tomorrowScreen.ts';
import type { DayFields } from './fields.ts';
import { inUse, pumpLabel } from './gearLabels.ts';
import styles from './tomorrow.module.css';

const words = en.spare;
const nobody = '-';

const inOrder = ({ people }: DayFields['book']) =>
  [...people.values()].sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));

export function SpareLines({ shiftId, book, draft, onChange, errors }: DayFields) {
  const worn = new Set(draft.wearers.map(({ pumpId }) => pumpId));
  const free = inUse(book.pumps, null).filter(({ id }) => !worn.has(id) || draft.sparePumpIds.includes(id));
  return (
    <section className={styles.part}>
      <h2>{words.heading}</h2>
      {free.length > 0 && (
        <Checklist
          name="sparePumps"
          label={words.pumps}
          options={free.map((pump) => ({ value: pump.id, label: pumpLabel(pump, dayIn(shiftId)) }))}
          value={[...draft.sparePumpIds]}
          onChange={(sparePumpIds) => onChange({ sparePumpIds })}
        />
      )}
      <TextField
        name="spareCassettes"
        label={words.cassettes}
        kind="digits"
        value={draft.spareCassettes}
        onChange={(spareCassettes) => onChange({ spareCassettes })}
        error={errorOf(errors, 'spareCassettes')}
      />
      <SelectField
        name="chargedBy"
        label={words.chargedBy}
        options={[
          { value: nobody, label: words.nobody },
          ...inOrder(book).map(({ id, name }) => ({ value: id, label: name })),
        ]}
        value={draft.chargedById ?? nobody}
        onChange={(id) => onChange({ chargedById: id === nobody ? null : id })}
      />
      <TextField
        name="remark"
        label={words.remark}
        value={draft.remark}
        onChange={(remark) => onChange({ remark })}
        error={errorOf(errors, 'remark')}
      />
    </section>
  );
}
