/**
 * The quiet way beside every tap that fixes a moment: at another time, typed from a watch or from paper. Closed it says nothing, and
 * the moment of the tap stands.
 */
import { en as words } from '#words/moment.ts';
import type { FieldError } from './ErrorSummary.tsx';
import { MomentFields } from './MomentFields.tsx';
import styles from './OtherTime.module.css';
import type { MomentDraft, MomentPlace } from './parseMoment.ts';
import { QuietAction } from './QuietAction.tsx';

export interface OtherTimeProps {
  readonly name: string;
  /** null: the moment of the tap. */
  readonly value: MomentDraft | null;
  readonly onChange: (draft: MomentDraft | null) => void;
  readonly place: MomentPlace;
  readonly errors: readonly FieldError[];
  /** Who holds the device, to stand in *from a watch, by whom*. */
  readonly holderName: string | null;
  readonly openText?: string | undefined;
  readonly timeLabel?: string | undefined;
}

export function OtherTime(props: OtherTimeProps) {
  const { name, value, onChange, place, errors, holderName, openText = words.other, timeLabel } = props;
  if (value === null)
    return (
      <div>
        <QuietAction
          onClick={() => onChange({ day: place.today, time: '', from: words.fromWatch(holderName), which: null })}
        >
          {openText}
        </QuietAction>
      </div>
    );
  return (
    <fieldset className={styles.inside} aria-label={openText}>
      <MomentFields name={name} value={value} onChange={onChange} place={place} errors={errors} timeLabel={timeLabel} />
      <div>
        <QuietAction onClick={() => onChange(null)}>{words.nowAfterAll}</QuietAction>
      </div>
    </fieldset>
  );
}
