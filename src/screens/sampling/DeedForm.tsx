/**
 * One thing that happened, on a page of its own: the moment is that of the tap that led here, or typed from a watch or paper. Refused,
 * everything typed stays.
 */
import type { ReactNode } from 'react';
import { wallTimeOf } from '#core/calendar.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { MomentFields } from '#parts/MomentFields.tsx';
import { OtherTime } from '#parts/OtherTime.tsx';
import { Page } from '#parts/Page.tsx';
import type { MomentDraft } from '#parts/parseMoment.ts';
import { useDraft } from '#store/hooks.ts';
import { en as momentWords } from '#words/moment.ts';
import { en as words } from '#words/sampling.ts';
import { type Deed, useDeed } from './useDeed.ts';

export interface DeedFormProps<D> extends Deed<D> {
  /** Names the draft. */
  readonly name: string;
  readonly heading: string;
  readonly action: string;
  readonly blank: D;
  readonly children: (typed: D, change: (part: Partial<D>) => void, errors: readonly FieldError[]) => ReactNode;
}

export function DeedForm<D extends object>(props: DeedFormProps<D>) {
  const { sampling, name, heading, action, blank, when, children } = props;
  const { sample, place, holderName } = sampling;
  const page = `/sample/${sample.id}`;
  const draftKey = `sample:${sample.id}/${name}`;
  const emptyMoment: MomentDraft = {
    day: sample.workOn,
    time: '',
    from: momentWords.fromWatch(holderName),
    which: null,
  };
  const draft = useDraft<{ readonly typed: D; readonly moment: MomentDraft | null }>(draftKey, {
    typed: blank,
    moment: when === 'typed' ? emptyMoment : null,
  });
  const { typed, moment } = draft.value;
  const deed = useDeed(props, draftKey, typed, moment);
  const change = (part: Partial<D>) => draft.set({ typed: { ...typed, ...part }, moment });
  const momentProps = { name: 'moment', place, errors: deed.errors };
  return (
    <Page
      heading={heading}
      over={words.over(place.site.name, sampling.pump)}
      back={page}
      action={
        <MainAction busy={deed.busy} onClick={deed.submit}>
          {action}
        </MainAction>
      }
    >
      <ErrorSummary errors={deed.errors} />
      {when === 'tap' && moment === null && <p>{words.deeds.at(wallTimeOf(deed.tapped.at, place.zone).time)}</p>}
      {when === 'typed' && moment !== null && (
        <MomentFields {...momentProps} value={moment} onChange={(changed) => draft.set({ typed, moment: changed })} />
      )}
      {children(typed, change, deed.errors)}
      {when === 'tap' && (
        <OtherTime
          {...momentProps}
          value={moment}
          onChange={(changed) => draft.set({ typed, moment: changed })}
          holderName={holderName}
        />
      )}
    </Page>
  );
}
