/** Whether the job may rest on the measurement by the answers so far, and every reason against it. */
import type { RelianceFinding } from '#findings/duties/groups/reliance.ts';
import { en as words } from '#words/reliance.ts';
import { blockSentences } from './blockSentences.ts';

export function WhatFollows({ finding }: { readonly finding: RelianceFinding | null }) {
  return (
    <section aria-live="polite">
      <h2>{words.result}</h2>
      {finding === null ? (
        <p>{words.resultOpen}</p>
      ) : finding.valid ? (
        <>
          <p>
            <strong>{words.valid(finding.reliableUntilOn)}</strong>
          </p>
          <p>{words.validNote}</p>
        </>
      ) : (
        <>
          <p>
            <strong>{words.invalid}</strong>
          </p>
          <ul>
            {blockSentences(finding.blocks).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
      <p>{words.defers}</p>
    </section>
  );
}
