/** Every notice made of this measurement, newest first, each with its bytes as they were handed out. */
import { wallTimeOf } from '#core/calendar.ts';
import { actEditionOf, editionDifference } from '#findings/duties/limits/editionDifference.ts';
import { HandedOut } from '#parts/HandedOut.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { NoticeRecord } from '#records/book.ts';
import { type KeptFile, useKeptFile } from '#store/hooks/useKeptFile.ts';
import { editionText } from '#words/limitsBeside.ts';
import { en as words } from '#words/noticeScreen.ts';
import { formatDay } from '#words/quantity.ts';
import styles from './notice.module.css';
import type { NoticeHere } from './noticeHere.ts';

export function whenAt(at: string, zone: string): string {
  const { day, time } = wallTimeOf(at, zone);
  return `${formatDay(day)}, ${time}`;
}

export const noticeFileName = ({ issued }: NoticeRecord, zone: string): string =>
  words.fileName(wallTimeOf(issued.at, zone).day, issued.revision);

export interface MadeNoticesProps {
  readonly here: NoticeHere;
  readonly zone: string;
  /** That of the current one, which the main action hands out. */
  readonly file: KeptFile;
}

export function MadeNotices({ here: { tellings, current }, zone, file }: MadeNoticesProps) {
  return (
    <section className={styles.section}>
      <h2>{words.madeHeading}</h2>
      <HandedOut state={file.state} outcome={file.outcome} />
      {tellings.toReversed().map(({ notice }) => (
        <div key={notice.id} className={styles.made}>
          <p>{words.made(notice.issued.revision, whenAt(notice.issued.at, zone))}</p>
          <Edition notice={notice} />
          {notice.id !== current?.id && <Earlier notice={notice} zone={zone} />}
        </div>
      ))}
    </section>
  );
}

/** A later edition of the rules shows here and rewrites nothing. */
function Edition({ notice: { issued } }: { readonly notice: NoticeRecord }) {
  const differs = editionText(editionDifference(actEditionOf(issued.editions, issued.notice)));
  return differs === null ? null : <p className={styles.quiet}>{differs}</p>;
}

function Earlier({ notice, zone }: { readonly notice: NoticeRecord; readonly zone: string }) {
  const file = useKeptFile(notice.issued.pdfHash);
  return (
    <>
      <HandedOut state={file.state} outcome={file.outcome} />
      {file.state !== 'missing' && (
        <div>
          <QuietAction busy={file.state === 'loading'} onClick={() => void file.handOut(noticeFileName(notice, zone))}>
            {words.handOut(notice.issued.revision)}
          </QuietAction>
        </div>
      )}
    </>
  );
}
