/** The frame of everything that is said of a day: whose day, the question, what stands in the way, one way on and one way back. */
import type { ReactNode } from 'react';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { en as words } from '#words/exposure.ts';
import type { DayOn } from './dayOn.ts';

/** What every form of the day is handed. */
export interface DayFormProps {
  readonly day: DayOn;
  readonly over: string;
  readonly onDone: () => void;
}

interface FrameProps {
  readonly heading: string;
  readonly over: string;
  readonly errors: readonly FieldError[];
  readonly busy: boolean;
  readonly saveText: string;
  readonly onSave: () => void;
  readonly onBack: () => void;
  readonly children: ReactNode;
}

export function DayForm({ heading, over, errors, busy, saveText, onSave, onBack, children }: FrameProps) {
  return (
    <Page
      heading={heading}
      over={over}
      action={
        <>
          <MainAction busy={busy} onClick={onSave}>
            {saveText}
          </MainAction>
          <QuietAction onClick={onBack}>{words.explain.back}</QuietAction>
        </>
      }
    >
      <ErrorSummary errors={errors} />
      {children}
    </Page>
  );
}
