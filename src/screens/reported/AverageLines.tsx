/** What the report states: the average, the hours, and what it says of itself. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { type Stated, en as words } from '#words/reported.ts';
import type { LinesOfReport } from './ReportedForm.tsx';

const kinds = ['measured', 'lessThan'] as const;
const stated: readonly Stated[] = ['yes', 'no', 'notStated'];

export function AverageLines({ draft, onChange, errors }: LinesOfReport) {
  const { fields } = words;
  return (
    <>
      <Choice
        name="kind"
        label={fields.kind}
        options={kinds.map((value) => ({ value, label: words.kinds[value] }))}
        value={draft.kind}
        onChange={(kind) => onChange({ kind })}
      />
      <QuantityField
        name="average"
        label={fields.average}
        hint={fields.averageHint}
        unit="µg/m³"
        value={draft.average}
        onChange={(average) => onChange({ average })}
        error={errorOf(errors, 'average')}
      />
      <QuantityField
        name="workedHours"
        label={fields.workedHours}
        unit="h"
        value={draft.workedHours}
        onChange={(workedHours) => onChange({ workedHours })}
        error={errorOf(errors, 'workedHours')}
      />
      {(['fullShift', 'ownFirm', 'accuracy'] as const).map((key) => (
        <Choice
          key={key}
          name={key}
          label={fields[key]}
          options={stated.map((value) => ({ value, label: words.stated[value] }))}
          value={draft[key]}
          onChange={(value) => onChange({ [key]: value })}
          error={errorOf(errors, key)}
        />
      ))}
      <TextField
        name="remark"
        label={fields.remark}
        rows={2}
        value={draft.remark}
        onChange={(remark) => onChange({ remark })}
        error={errorOf(errors, 'remark')}
      />
    </>
  );
}
