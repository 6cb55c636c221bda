/** Minutes on the worker, large; litres if the flow held; whether that is enough air to show anything low; the next look. */
import { wallTimeOf } from '#core/calendar.ts';
import { aimOf } from '#findings/aim.ts';
import { checksOfSample } from '#findings/checks.ts';
import { findOnWorker, type OnWorkerFinding } from '#findings/onWorker.ts';
import { Figure } from '#parts/Figure.tsx';
import { Notice } from '#parts/Notice.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { formatEstimateNumber, formatMinutes } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import { en as words } from '#words/sampling.ts';
import type { Sampling } from './useSampling.ts';

const isOff = ({ state }: OnWorkerFinding): boolean => state === 'offRunning' || state === 'offStopped';

/** Said by the page in its own place. */
const saidElsewhere: readonly string[] = ['stillRunning', 'notPutOn', 'fittingNotRecorded'];

export function Running({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book, place } = sampling;
  const aim = aimOf(book);
  const finding = findOnWorker(sample.id, book, place.now, aim);
  const clock = (at: string): string => wallTimeOf(at, place.zone).time;
  const putOnAt = sample.putOn?.at;
  const hasFlow = checksOfSample(sample, book).before !== null;
  const reasons = finding.reasons.filter(({ key }) => !saidElsewhere.includes(key));
  return (
    <>
      <Figure
        label={words.minutes}
        value={formatMinutes(finding.soFarMin)}
        note={putOnAt === undefined ? words.notSince : words.since(clock(putOnAt))}
      />
      {!isOff(finding) && <Look finding={finding} clock={clock} />}
      {finding.litresIfHeld === null ? (
        !hasFlow && <p>{words.litresNone}</p>
      ) : (
        <Figure
          label={words.litres}
          value={formatEstimateNumber(finding.litresIfHeld.estimate, finding.litresIfHeld.unit)}
          unit={finding.litresIfHeld.unit}
          note={<Enough finding={finding} />}
        >
          <WorkingView working={finding.litresIfHeld} />
          {finding.litresNeeded !== null && <WorkingView working={finding.litresNeeded} />}
          {aim?.from === 'usual' && <p>{words.enoughUsual(aim.reportingLimitUg)}</p>}
        </Figure>
      )}
      {finding.methodFullAt !== null && finding.enough === 'yes' && <p>{words.full(clock(finding.methodFullAt))}</p>}
      {reasons.length > 0 && (
        <Notice kind="alert">
          {reasons.map((reason) => (
            <p key={reason.key}>{reasonSentence(reason)}</p>
          ))}
        </Notice>
      )}
    </>
  );
}

interface LookProps {
  readonly finding: OnWorkerFinding;
  readonly clock: (at: string) => string;
}

function Look({ finding, clock }: LookProps) {
  const { nextLookAt, lookOverdue, lastLookAt } = finding;
  const last = lastLookAt === null ? '' : ` ${words.lookedAt(clock(lastLookAt))}`;
  if (nextLookAt === null) return last === '' ? null : <p>{last}</p>;
  const text = lookOverdue ? words.lookOverdue(clock(nextLookAt)) : words.look(clock(nextLookAt));
  return lookOverdue ? (
    <Notice kind="alert">
      <p>{text + last}</p>
    </Notice>
  ) : (
    <p>{text + last}</p>
  );
}

function Enough({ finding }: { readonly finding: OnWorkerFinding }) {
  const { enough, minutesToGoMin } = finding;
  return <p>{enough === 'notYet' ? words.enough.notYet(minutesToGoMin) : words.enough[enough]}</p>;
}
