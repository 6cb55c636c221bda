/** The page of one result that is to be told: how it stands, the notice being made or given, and every notice made before. */
import { useState } from 'react';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice as Told } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { RestsOn } from '#parts/RestsOn.tsx';
import { deviceZone } from '#store/device.ts';
import { type KeptFile, useKeptFile } from '#store/hooks/useKeptFile.ts';
import { restsLines } from '#words/gearLines.ts';
import { en as words } from '#words/noticeScreen.ts';
import { formatDay } from '#words/quantity.ts';
import { GiveForm } from './GiveForm.tsx';
import { MadeNotices, noticeFileName } from './MadeNotices.tsx';
import { MakeForm } from './MakeForm.tsx';
import { namesOf } from './noticeDraft.ts';
import type { NoticeHere } from './noticeHere.ts';
import { Preview } from './Preview.tsx';
import { useNoticeMaking } from './useNoticeMaking.ts';

export interface NoticePageProps {
  readonly here: NoticeHere;
  readonly by: string | null;
}

export function NoticePage({ here, by }: NoticePageProps) {
  const [again, setAgain] = useState(false);
  const making = useNoticeMaking(here, by);
  const { current, measurement, revision } = here;
  const zone = here.zone ?? deviceZone();
  const file = useKeptFile(current?.issued.pdfHash ?? null);
  const isMaking = current === null || again;
  const make = async () => {
    if (await making.make()) setAgain(false);
  };
  return (
    <Page
      heading={here.owed.kind === 'revised' && current === null ? words.headingAgain : words.heading}
      over={words.over(here.worker ?? words.someWorker, measurement.workOn)}
      back="/todo"
      action={
        isMaking ? (
          <MainAction busy={making.busy} onClick={() => void make()}>
            {making.busy ? words.making : revision === '1' ? words.make : words.makeRevision(revision)}
          </MainAction>
        ) : (
          <HandOut revision={current.issued.revision} file={file} name={noticeFileName(current, zone)} />
        )
      }
      aside={isMaking ? <Preview here={here} text={making.draft.value} /> : <Beside here={here} />}
    >
      <Standing here={here} />
      <RestsOn
        lines={restsLines(gearDoubtsOfPaper({ kind: 'measurement', id: measurement.id }, here.book))}
        paper={current !== null}
      />
      {isMaking ? (
        <MakeForm here={here} making={making} />
      ) : (
        <>
          <MadeNotices here={here} zone={zone} file={file} />
          <GiveForm here={here} notice={current} zone={zone} by={by} />
          <div>
            <QuietAction onClick={() => setAgain(true)}>{words.again}</QuietAction>
          </div>
        </>
      )}
      {isMaking && <Beside here={here} />}
    </Page>
  );
}

interface HandOutProps {
  readonly revision: string;
  readonly file: KeptFile;
  readonly name: string;
}

function HandOut({ revision, file, name }: HandOutProps) {
  return (
    <MainAction busy={file.state === 'loading'} onClick={() => void file.handOut(name)}>
      {words.handOut(revision)}
    </MainAction>
  );
}

function Beside({ here: { measurement, current } }: { readonly here: NoticeHere }) {
  return (
    <Lines>
      {measurement.from === 'sampled' && <Line to={`/day/${measurement.id}`}>{words.day}</Line>}
      {current !== null && <Line to={`/story/${encodeURIComponent(current.key)}`}>{words.story}</Line>}
    </Lines>
  );
}

/** Until when, who was not told yet, and what is to be done where the day has passed. */
function Standing({ here: { owed, book, current } }: { readonly here: NoticeHere }) {
  const due = formatDay(owed.dueOn, 'en', 'weekday');
  const open = namesOf(owed.openIds, book);
  return (
    <>
      {owed.overdue && <Told kind="alert">{words.overdue(due)}</Told>}
      {!owed.overdue && owed.toldLate && <Told>{words.toldLate}</Told>}
      {!owed.overdue && owed.openIds.length > 0 && <p>{words.due(formatDay(owed.receivedOn, 'en', 'weekday'), due)}</p>}
      {owed.laterReadingOn !== null && owed.openIds.length > 0 && (
        <p>{words.laterReading(formatDay(owed.laterReadingOn, 'en', 'weekday'))}</p>
      )}
      {owed.kind === 'revised' && current === null && <p>{words.why.revised}</p>}
      <p>{owed.openIds.length === 0 ? words.allTold : words.notTold(open.length > 0 ? open : [words.someWorker])}</p>
    </>
  );
}
