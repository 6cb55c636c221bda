/** How it is measured, how many cassettes and blanks that takes, and the way to ask whether it can prove anything. */
import { namesIn } from '#findings/naming.ts';
import type { PlanStanding } from '#findings/season/plan.ts';
import { Line, Lines, Particulars } from '#parts/Lines.tsx';
import type { Book, PlanRecord } from '#records/book.ts';
import { en } from '#words/planScreen.ts';
import { formatQuantity } from '#words/quantity.ts';
import { provePath } from './provePath.ts';

const words = en.page;

export interface PlanParticularsProps {
  readonly plan: PlanRecord;
  readonly standing: PlanStanding;
  readonly book: Book;
}

export function PlanParticulars({ plan, standing, book }: PlanParticularsProps) {
  const { methodId, reportingLimitUg, flowLPerMin, cassettesCount, siteId, reason, remark } = plan;
  const nameOf = namesIn(book);
  const { particulars, of, notSaid } = words;
  const optional = (name: string, value: string | null) => (value === null ? [] : [[name, value] as const]);
  return (
    <>
      <section>
        <h2>{en.how.heading}</h2>
        <Particulars
          items={[
            [particulars.choice, en.who.choices[plan.choice]],
            [particulars.crew, String(plan.crewCount)],
            ...optional(particulars.reason, reason),
            [particulars.site, siteId === null ? en.work.anySite : (nameOf(siteId) ?? notSaid)],
            [particulars.method, methodId === null ? notSaid : (nameOf(methodId) ?? methodId)],
            [particulars.reportingLimit, reportingLimitUg === null ? notSaid : formatQuantity(reportingLimitUg, 'µg')],
            [particulars.flow, flowLPerMin === null ? notSaid : formatQuantity(flowLPerMin, 'L/min')],
            [particulars.cassettes, String(cassettesCount)],
            [particulars.samples, of(standing.samplesCount, standing.samplesToDoCount)],
            [particulars.blanks, of(standing.blanksCount, standing.blanksToDoCount)],
            ...optional(particulars.remark, remark),
          ]}
        />
      </section>
      <Lines>
        <Line to={provePath({ methodId, limit: reportingLimitUg, flow: flowLPerMin, cassettes: cassettesCount })}>
          {en.how.toProve}
        </Line>
      </Lines>
    </>
  );
}
