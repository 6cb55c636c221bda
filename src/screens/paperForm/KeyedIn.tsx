/** A form that is keyed in: what was saved, the number to write where the book gave it, and the way to the next form. */
import { BigNumber } from '#parts/BigNumber.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { en as words } from '#words/keyIn.ts';

export interface KeyedInForm {
  readonly worker: string;
  readonly sampleId: string;
  readonly shiftId: string;
  readonly workdayId: string;
  readonly sampleNumber: string;
  /** The paper had none: the book gave it. */
  readonly isNew: boolean;
}

export function KeyedIn({ form, onNext }: { readonly form: KeyedInForm; readonly onNext: () => void }) {
  const { worker, sampleId, shiftId, workdayId, sampleNumber, isNew } = form;
  return (
    <Page
      heading={words.savedHeading}
      back={`/shift/${shiftId}`}
      backText={words.toDay}
      action={<MainAction onClick={onNext}>{words.next}</MainAction>}
    >
      <p role="status">{words.saved(worker, sampleNumber)}</p>
      {isNew && <BigNumber label={words.writeNumber} digits={sampleNumber} />}
      <Lines heading={words.more}>
        <Line to={`/sample/${sampleId}`}>{words.toSample}</Line>
        <Line to={`/day/${workdayId}`}>{words.toHours}</Line>
        <Line to={`/shift/${shiftId}/blank`}>{words.toBlanks}</Line>
        <Line to={`/shift/${shiftId}/roster`}>{words.toRoster}</Line>
      </Lines>
    </Page>
  );
}
