/** What the answers mean, as soon as one of them tells: measured again or not, and what is worn meanwhile. */
import { Notice } from '#parts/Notice.tsx';
import { changeKeys, en } from '#words/jobStart.ts';
import type { Answers } from './jobStartDraft.ts';

const words = en.means;

export function WhatItMeans({ said }: { readonly said: Answers }) {
  const values = changeKeys.map((key) => said[key]);
  const isChanged = values.includes('yes');
  const isDoubtful = values.includes('notKnown');
  return (
    <section>
      <h2>{words.heading}</h2>
      {isChanged || isDoubtful ? (
        <>
          <Notice>
            <strong>{words.changed}</strong>
          </Notice>
          {isDoubtful && <p>{words.notKnown}</p>}
          <p>{words.changedWhy}</p>
          <p>{words.presumed}</p>
        </>
      ) : (
        <p>{values.includes(undefined) ? words.open : words.none}</p>
      )}
    </section>
  );
}
