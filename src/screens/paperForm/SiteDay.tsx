/** The head of the paper: from what paper, which site, which day. */
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { SiteLines } from '#parts/SiteLines.tsx';
import { TextField } from '#parts/TextField.tsx';
import { states } from '#reference/states.ts';
import { en as words } from '#words/keyIn.ts';
import type { LinesOfForm } from './linesOfForm.ts';

export function SiteDay({ draft, onChange, errors, registers, place }: LinesOfForm) {
  return (
    <>
      <TextField
        name="from"
        label={words.from}
        hint={words.fromHint}
        value={draft.from}
        onChange={(from) => onChange({ from })}
        error={errorOf(errors, 'from')}
      />
      <PickOrAdd
        name="site"
        label={words.site}
        options={registers.sites.list.map(({ id, name, stateCode }) => ({ id, label: name, detail: stateCode }))}
        value={draft.siteId}
        onChange={(siteId) => onChange({ siteId })}
        addText={words.siteAdd}
        error={errorOf(errors, 'site')}
      >
        <SiteLines
          value={draft.site}
          onChange={(site) => onChange({ site, siteId: addingNew })}
          errors={errors}
          states={states().map(({ code, name }) => ({ value: code, label: name }))}
        />
      </PickOrAdd>
      <DateField
        name="day"
        label={words.day}
        value={draft.day}
        today={place.today}
        onChange={(day) => onChange({ day })}
        error={errorOf(errors, 'day')}
      />
      <Choice
        name="pastMidnight"
        label={words.pastMidnight}
        hint={words.pastMidnightHint}
        options={(['no', 'yes'] as const).map((value) => ({ value, label: words[value] }))}
        value={draft.pastMidnight}
        onChange={(pastMidnight) => onChange({ pastMidnight })}
      />
    </>
  );
}
