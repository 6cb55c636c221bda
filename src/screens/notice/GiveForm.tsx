/**
 * At the gate or in the office, paper in hand: each worker who gets the notice is noted at the moment of the tap, or at another time
 * typed from a watch. Posted, it is noted for everyone at once, with the place and a photo of it.
 */
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { OtherTime } from '#parts/OtherTime.tsx';
import { Pictures } from '#parts/Pictures.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { NoticeRecord } from '#records/book.ts';
import { happenedNow } from '#store/device.ts';
import { usePictures } from '#store/hooks/usePhotos.ts';
import { en } from '#words/noticeScreen.ts';
import { whenAt } from './MadeNotices.tsx';
import styles from './notice.module.css';
import type { NoticeHere } from './noticeHere.ts';
import { everyone, type GiveText, hows, useGiving } from './useGiving.ts';

const words = en.give;

export interface GiveFormProps {
  readonly here: NoticeHere;
  readonly notice: NoticeRecord;
  readonly zone: string;
  readonly by: string | null;
}

/** Once everyone was told the form is folded away: it is still there for who got it twice. */
export function GiveForm(props: GiveFormProps) {
  const { here, notice, zone } = props;
  const everyoneTold = notice.issued.workerIds.every((id) => !here.owed.openIds.includes(id));
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <Given here={here} notice={notice} zone={zone} />
      {everyoneTold ? (
        <details>
          <summary className={styles.summary}>{words.again}</summary>
          <Asked {...props} />
        </details>
      ) : (
        <Asked {...props} />
      )}
      {notice.given.some(({ how }) => how === 'posted') && <PostedPictures {...props} />}
    </section>
  );
}

function Asked({ here, notice, zone, by }: GiveFormProps) {
  const giving = useGiving({ here, notice, zone, by });
  const { errors, draft, place } = giving;
  const text = draft.value;
  const change = (part: Partial<GiveText>) => draft.set({ ...text, ...part });
  const { book } = here;
  const holder = book.people.get(by ?? '')?.name ?? null;
  return (
    <div className={styles.section}>
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <Choice
        name="worker"
        label={words.worker}
        options={[
          ...notice.issued.workerIds.map((id) => ({ value: id, label: book.people.get(id)?.name ?? en.someWorker })),
          ...(notice.issued.form === 'posted' ? [{ value: everyone, label: words.everyone }] : []),
        ]}
        value={text.workerId}
        onChange={(workerId) => change({ workerId, how: workerId === everyone ? 'posted' : null })}
        error={errorOf(errors, 'worker')}
      />
      {text.workerId !== null && text.workerId !== everyone && (
        <Choice
          name="how"
          label={words.how}
          options={hows.map((value) => ({ value, label: words.hows[value] }))}
          value={text.how}
          onChange={(how) => change({ how })}
          error={errorOf(errors, 'how')}
        />
      )}
      {text.workerId === everyone && (
        <TextField
          name="place"
          label={words.place}
          value={text.place}
          onChange={(typed) => change({ place: typed })}
          error={errorOf(errors, 'place')}
        />
      )}
      <Choice
        name="language"
        label={words.language}
        options={notice.issued.languages.map((value) => ({ value, label: en.languages[value] }))}
        value={text.language}
        onChange={(language) => change({ language })}
        error={errorOf(errors, 'language')}
      />
      {text.how === 'handedOver' || text.how === 'readAloud' ? (
        <TextField
          name="initials"
          label={words.initials}
          value={text.initials}
          onChange={(initials) => change({ initials })}
          error={errorOf(errors, 'initials')}
        />
      ) : null}
      <OtherTime
        name="moment"
        value={text.moment}
        onChange={(moment) => change({ moment })}
        place={place}
        errors={errors}
        holderName={holder}
      />
      <div>
        <QuietAction busy={giving.busy} onClick={() => void giving.give()}>
          {words.save}
        </QuietAction>
      </div>
    </div>
  );
}

function Given({ here: { book, owed }, notice, zone }: Omit<GiveFormProps, 'by'>) {
  const name = (id: string | null): string => book.people.get(id ?? '')?.name ?? en.someWorker;
  const open = notice.issued.workerIds.filter((id) => owed.openIds.includes(id));
  return (
    <Lines whenEmpty={words.none}>
      {[
        ...notice.given.map(({ factId, how, workerId, place, at }) => (
          <Line key={factId}>
            {how === 'posted'
              ? words.done.posted(place ?? '', whenAt(at, zone))
              : words.done[how](name(workerId), whenAt(at, zone))}
          </Line>
        )),
        ...open.map((id) => <Line key={id}>{words.open(name(id))}</Line>),
      ]}
    </Lines>
  );
}

/** Where it hangs, as a picture beside the notice: kept by a tap of its own. */
function PostedPictures({ here: { book, measurement }, notice, zone, by }: GiveFormProps) {
  const photos = notice.photos ?? [];
  const pictures = usePictures(photos);
  const keep = () =>
    pictures.choice.handIn({
      recordKey: notice.key,
      of: 'other',
      title: en.over(book.people.get(measurement.workerId ?? '')?.name ?? en.someWorker, measurement.workOn),
      entry: { happened: happenedNow(zone), by },
    });
  return (
    <Pictures
      held={pictures}
      name="photo"
      of="other"
      hint={words.photo}
      photos={photos}
      zone={zone}
      nameOf={(id) => book.people.get(id)?.name}
      onKeep={keep}
    />
  );
}
