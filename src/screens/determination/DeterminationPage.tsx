/** One task group at one site: what may be written, what stands against it, the form, and what was written before. */
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { ErrorSummary } from '#parts/ErrorSummary.tsx';
import { Line, Lines, Particulars } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { RestsOn } from '#parts/RestsOn.tsx';
import { en as words } from '#words/determinationScreen.ts';
import { restsLines } from '#words/gearLines.ts';
import { formatDay, formatEstimate, formatQuantity } from '#words/quantity.ts';
import { AskedFields } from './AskedFields.tsx';
import { Blocks } from './Blocks.tsx';
import { type DeterminationHere, groupText } from './determinationHere.ts';
import { useWriting } from './useWriting.ts';
import { Written } from './Written.tsx';

export interface DeterminationPageProps {
  readonly here: DeterminationHere;
  readonly by: string | null;
}

export function DeterminationPage({ here, by }: DeterminationPageProps) {
  const writing = useWriting(here, by);
  const { finding, site, book } = here;
  return (
    <Page
      heading={words.heading}
      over={`${site.name}: ${groupText(here.groupKey, book)}`}
      back={`/determination/${site.id}`}
      action={
        <MainAction busy={writing.busy} onClick={() => void writing.make()}>
          {writing.busy ? words.making : words.make[writing.outcome]}
        </MainAction>
      }
      aside={<Evidence here={here} />}
    >
      <ErrorSummary errors={writing.errors} />
      {finding.writtenId !== null && finding.differsFromRecord && <Notice kind="alert">{words.differs}</Notice>}
      <RestsOn lines={restsLines(gearDoubtsOfPaper({ kind: 'measurements', ids: finding.measurementIds }, book))} />
      <Written here={here} />
      <p>
        <strong>{words.outcome[finding.outcome]}</strong>
      </p>
      <Blocks here={here} />
      <AskedFields here={here} writing={writing} />
    </Page>
  );
}

/** What it would rest on. */
function Evidence({ here: { finding, measurements, book } }: Pick<DeterminationPageProps, 'here'>) {
  const name = (id: string | null): string => book.people.get(id ?? '')?.name ?? '';
  const names = (ids: readonly string[]): string =>
    ids
      .map(name)
      .filter((one) => one !== '')
      .join(', ');
  const { highest } = finding;
  return (
    <>
      <Lines heading={words.measured}>
        {measurements.map(({ id, workerId, workOn, twa8UgPerM3, from, limits }) => (
          <Line
            key={id}
            to={from === 'sampled' ? `/day/${id}` : `/reported?correct=${id}`}
            end={
              twa8UgPerM3 === null
                ? undefined
                : formatEstimate(twa8UgPerM3, 'µg/m³', {
                    against: [limits.set.actionLevel.value, limits.set.pel.value],
                  })
            }
          >
            {`${name(workerId)}, ${formatDay(workOn)}`}
          </Line>
        ))}
      </Lines>
      <Particulars
        items={[
          ...(highest === null || !Number.isFinite(highest.upperUgPerM3)
            ? []
            : [[words.highest, formatQuantity(highest.upperUgPerM3, 'µg/m³')] as const]),
          ...(finding.standsForIds.length === 0 ? [] : [[words.standsFor, names(finding.standsForIds)] as const]),
        ]}
      />
    </>
  );
}
