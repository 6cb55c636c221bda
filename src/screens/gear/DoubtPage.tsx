/**
 * Office or supervisor, after something was found bad: how many things rest on it, each with the way to it, and the one decision with its
 * reason. What the decision will change is said before it is taken. Afterwards every one of these pages shows what was decided.
 */

import { useState } from 'react';
import { effectOf } from '#findings/gear/doubtsOf.ts';
import { touchedBy } from '#findings/gear/touchedBy.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { GearDoubt } from '#records/book.ts';
import { en } from '#words/gearDoubt.ts';
import { DecisionForm } from './DecisionForm.tsx';
import { type GearHere, pathOf } from './gearHere.ts';
import { isDisputed } from './isDisputed.ts';
import { TouchedLists } from './TouchedLists.tsx';

const words = en.page;

export interface DoubtPageProps {
  readonly here: GearHere;
  readonly doubtId: string;
}

export function DoubtPage({ here, doubtId }: DoubtPageProps) {
  const { gear, record, book, duties, name } = here;
  const [again, setAgain] = useState(false);
  const doubt = record.doubts?.find((one) => one.doubtId === doubtId);
  const back = pathOf(here);
  if (doubt === undefined)
    return (
      <Page
        heading={words.heading(name)}
        back={back}
        backText={here.title}
        action={<MainAction to={back}>{words.toGear(name)}</MainAction>}
      >
        <p>{words.gone}</p>
      </Page>
    );
  const touched = touchedBy(gear, record.id, doubtId, book, duties);
  const about = (
    <>
      <Said doubt={doubt} />
      {isDisputed(record, doubt) && <Notice kind="alert">{words.differ}</Notice>}
      {touched !== null && <TouchedLists touched={touched} here={here} />}
    </>
  );
  if (effectOf(doubt) === 'open' || isDisputed(record, doubt) || again)
    return (
      <DecisionForm key={doubt.settled?.factId ?? 'open'} here={here} doubt={doubt} onWritten={() => setAgain(false)}>
        {about}
      </DecisionForm>
    );
  return (
    <Page
      heading={words.heading(name)}
      over={words.span(doubt.fromOn, doubt.untilOn)}
      back={back}
      backText={here.title}
      action={
        <>
          <MainAction to={back}>{words.toGear(name)}</MainAction>
          <QuietAction onClick={() => setAgain(true)}>{words.again}</QuietAction>
        </>
      }
    >
      {about}
    </Page>
  );
}

function Said({ doubt: { found, foundOn, settled } }: { readonly doubt: GearDoubt }) {
  return (
    <>
      <p>{words.found(found, foundOn)}</p>
      {settled !== null && (
        <p>
          <strong>{words.settledAs(settled.decision, settled.why)}</strong>
        </p>
      )}
      {settled?.decision === 'asFound' && settled.trueOverRead !== null && <p>{words.factor(settled.trueOverRead)}</p>}
    </>
  );
}
