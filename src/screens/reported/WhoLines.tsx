/** Who measured, in which report, and when it came. */
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { fromKeys, en as words } from '#words/reported.ts';
import type { LinesOfReport } from './ReportedForm.tsx';

export function WhoLines({ draft, onChange, errors, today }: LinesOfReport) {
  const { fields } = words;
  return (
    <>
      <Choice
        name="from"
        label={fields.from}
        options={fromKeys.map((value) => ({ value, label: words.from[value] }))}
        value={draft.from}
        onChange={(from) => onChange({ from, ...(from === 'ownEarlier' ? { ownFirm: 'yes' as const } : {}) })}
        error={errorOf(errors, 'from')}
      />
      <TextField
        name="fromName"
        label={fields.fromName}
        value={draft.fromName}
        onChange={(fromName) => onChange({ fromName })}
        error={errorOf(errors, 'fromName')}
      />
      <TextField
        name="reportNumber"
        label={fields.reportNumber}
        kind="code"
        value={draft.reportNumber}
        onChange={(reportNumber) => onChange({ reportNumber })}
        error={errorOf(errors, 'reportNumber')}
      />
      <DateField
        name="workOn"
        label={fields.workOn}
        value={draft.workOn}
        today={today}
        onChange={(workOn) => onChange({ workOn })}
        error={errorOf(errors, 'workOn')}
      />
      <DateField
        name="receivedOn"
        label={fields.receivedOn}
        hint={fields.receivedHint}
        value={draft.receivedOn}
        today={today}
        onChange={(receivedOn) => onChange({ receivedOn })}
        error={errorOf(errors, 'receivedOn')}
      />
    </>
  );
}
