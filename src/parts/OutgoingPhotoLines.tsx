/** What became of pictures that were handed in: being written, kept, or not kept and why, with another try. Beside them, never in a form's way. */
import { en as words } from '#words/photos.ts';
import { Notice } from './Notice.tsx';
import { QuietAction } from './QuietAction.tsx';

export interface OutgoingLine {
  readonly id: string;
  readonly title: string;
  readonly of: keyof typeof words.alt;
  readonly state: 'keeping' | 'kept' | 'notKept';
  readonly why: keyof typeof words.refused | keyof typeof words.why | null;
  /** Whether it is small already: what cannot be read here cannot be kept by trying again. */
  readonly canTryAgain: boolean;
}

export interface OutgoingPhotoLinesProps {
  readonly photos: readonly OutgoingLine[];
  readonly onTryAgain: (id: string) => void;
  readonly onLetGo: (id: string) => void;
}

const sentences: Readonly<Record<string, string>> = { ...words.refused, ...words.why };

export function OutgoingPhotoLines({ photos, onTryAgain, onLetGo }: OutgoingPhotoLinesProps) {
  return photos.map(({ id, title, of, state, why, canTryAgain }) =>
    state === 'notKept' ? (
      <Notice
        key={id}
        kind="alert"
        actions={
          <>
            {canTryAgain && <QuietAction onClick={() => onTryAgain(id)}>{words.queue.again}</QuietAction>}
            <QuietAction onClick={() => onLetGo(id)}>{words.queue.leave}</QuietAction>
          </>
        }
      >
        <p>{words.queue.notKept(title, sentences[why ?? ''] ?? words.why.unknown)}</p>
        {of === 'meterReading' && <p>{words.readingStands}</p>}
      </Notice>
    ) : (
      <Notice key={id}>
        <p>{words.queue[state](title)}</p>
      </Notice>
    ),
  );
}
