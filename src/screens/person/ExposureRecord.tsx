/**
 * The office, when a worker or somebody for the worker asks for the record of a day: for whom it is, and the paper with every figure, its
 * working and what was struck. Afterwards its bytes are kept, and the book says who got it.
 */
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { RestsOn } from '#parts/RestsOn.tsx';
import { TextField } from '#parts/TextField.tsx';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta, useWorkdayBook } from '#store/hooks.ts';
import { restsLines } from '#words/gearLines.ts';
import { en } from '#words/person.ts';
import { en as papers } from '#words/printPapers.ts';
import { RecordsMade } from './RecordsMade.tsx';
import { type RecordHere, recordHere } from './recordHere.ts';
import { useRecordMaking } from './useRecordMaking.ts';

const words = en.record;

export function ExposureRecord({ workdayId = '' }: { readonly workdayId?: string }) {
  const found = useFoundInBook(findDutiesInSteps, dayOf(now(), deviceZone()));
  const slice = useWorkdayBook(workdayId);
  const meta = useBookMeta();
  if (found === undefined || slice === undefined || meta === undefined)
    return (
      <Page heading={words.heading} back="/person">
        <p role="status">{en.looking}</p>
      </Page>
    );
  const here = slice === null ? null : recordHere(workdayId, slice, found.found, found.book);
  if (here === null)
    return (
      <Page heading={words.heading} back="/person" action={<MainAction to="/person">{en.gone.action}</MainAction>}>
        <p>{words.gone}</p>
      </Page>
    );
  return <RecordForm here={here} by={meta.holderPersonId} />;
}

function RecordForm({ here, by }: { readonly here: RecordHere; readonly by: string | null }) {
  const making = useRecordMaking(here, by);
  const { draft, errors } = making;
  const text = draft.value;
  const again = here.revision !== '1';
  return (
    <Page
      heading={words.heading}
      over={words.over(here.worker, here.finding.workOn)}
      back={`/person/${here.workerId}`}
      action={
        <MainAction busy={making.busy} onClick={() => void making.make()}>
          {making.busy ? words.making : again ? words.makeRevision(here.revision) : words.make}
        </MainAction>
      }
      aside={<RecordsMade here={here} />}
    >
      <ErrorSummary errors={errors} />
      <RestsOn
        lines={restsLines(gearDoubtsOfPaper({ kind: 'exposureRecord', id: here.finding.workdayId }, here.book))}
        paper={again}
      />
      <p>{words.intro}</p>
      <TextField
        name="to"
        label={words.to}
        hint={words.toHint}
        value={text.to}
        onChange={(to) => draft.set({ ...text, to })}
        error={errorOf(errors, 'to')}
      />
      <Choice
        name="shownAs"
        label={words.shownAs}
        options={[
          { value: 'name', label: words.name },
          { value: 'identifier', label: words.identifier },
        ]}
        value={text.shownAs}
        onChange={(shownAs) => draft.set({ ...text, shownAs })}
        error={errorOf(errors, 'shownAs')}
      />
      {again && (
        <TextField
          name="why"
          label={words.why}
          rows={2}
          value={text.why}
          onChange={(why) => draft.set({ ...text, why })}
          error={errorOf(errors, 'why')}
        />
      )}
      <Choice
        name="paper"
        label={papers.paper}
        options={(['letter', 'a4'] as const).map((value) => ({ value, label: papers.papers[value] }))}
        value={text.paper}
        onChange={(paper) => draft.set({ ...text, paper })}
      />
      <Lines>
        <Line to={`/day/${here.finding.workdayId}`}>{words.day}</Line>
      </Lines>
    </Page>
  );
}
