/** The picture of one task group, the key of its marks, its table with the way to each day, and where its limits stand. */
import type { PicturePoint, SeasonPicture } from '#findings/season/picture.ts';
import { hrefOf } from '#parts/href.ts';
import { Plot } from '#parts/Plot.tsx';
import { PlotKey } from '#parts/PlotMarks.tsx';
import type { Book } from '#records/book.ts';
import { formatDay, formatEstimate, formatNumber } from '#words/quantity.ts';
import { en as screen } from '#words/resultsByDate.ts';
import { en as words } from '#words/seasonPicture.ts';
import styles from './resultsByDate.module.css';

interface PictureProps {
  readonly picture: SeasonPicture;
  readonly book: Book;
}

export function Picture({ picture, book }: PictureProps) {
  const { points, limits, axisUgPerM3, days } = picture;
  if (days === null) return <p>{words.none}</p>;
  const doubtfulCount = points.filter(({ doubtful }) => doubtful).length;
  const atLeastCount = points.filter(({ atLeast }) => atLeast).length;
  return (
    <Plot
      title={words.chart(days.fromOn, days.toOn)}
      description={screen.description(points.length, doubtfulCount, atLeastCount)}
      x={{
        label: words.days,
        from: days.fromOn,
        to: days.toOn,
        ticks: days.ticksOn.map((at) => ({ at, text: screen.tick(at) })),
      }}
      y={{
        label: words.axis,
        from: 0,
        to: axisUgPerM3.maximum,
        ticks: axisUgPerM3.ticks.map((at) => ({ at, text: String(at) })),
      }}
      limits={limits.map(({ which, limitUgPerM3, fromOn, toOn }) => ({
        name: screen.limitShort[which](formatNumber(limitUgPerM3, 'µg/m³', { digits: 'working' })),
        y: limitUgPerM3,
        from: fromOn,
        to: toOn,
      }))}
      marks={points.map(({ measurementId, workOn, lowerUgPerM3, upperUgPerM3, atLeast, doubtful }) => ({
        id: measurementId,
        x: workOn,
        low: lowerUgPerM3,
        high: upperUgPerM3,
        atLeast,
        doubtful,
      }))}
      table={{
        open: words.table,
        startOpen: true,
        wordy: true,
        head: [words.columns.day, words.columns.average, words.columns.worker, words.columns.note, words.columns.site],
        rows: points.map((point) => ({ key: point.measurementId, cells: cellsOf(point, book) })),
      }}
    >
      <PlotKey
        items={[
          { shape: 'figure', text: words.marks.sound },
          { shape: 'bounds', text: words.marks.between },
          { shape: 'atLeast', text: words.marks.atLeast },
          { shape: 'doubtful', text: words.marks.doubtful },
        ]}
      />
    </Plot>
  );
}

/** Where each line of the picture stands, and from when to when it was held against a result. */
export const Limits = ({ limits }: Pick<SeasonPicture, 'limits'>) =>
  limits.length === 0 ? null : (
    <section>
      <h2>{screen.limitsHeading}</h2>
      <ul className={styles.list}>
        {limits.map((limit) => (
          <li key={`${limit.which} ${limit.limitSetId} ${limit.limitUgPerM3}`}>{words.limitLong(limit)}</li>
        ))}
      </ul>
    </section>
  );

function cellsOf(point: PicturePoint, book: Book) {
  const { workOn, workdayId, from, measurementId, workerId, siteId, limits } = point;
  const to = workdayId === null ? `/reported?correct=${measurementId}` : `/day/${workdayId}`;
  const against = [limits.actionLevelUgPerM3, limits.pelUgPerM3];
  return [
    <a key="day" className={styles.day} href={hrefOf(to)}>
      {formatDay(workOn)}
    </a>,
    formatEstimate(estimateOf(point), 'µg/m³', { against }),
    book.people.get(workerId ?? '')?.name ?? words.someone,
    [
      words.from(from),
      ...(point.atLeast ? [words.atLeast] : []),
      ...(point.doubtful ? [words.doubtful] : []),
      ...(point.mayBeOther ? [words.mayBeOther] : []),
    ].join('; '),
    book.sites.get(siteId ?? '')?.name ?? '',
  ];
}

/** What is only *at least* is printed as that, whatever its upper end. */
function estimateOf({ lowerUgPerM3: lower, upperUgPerM3: upper, valueKind }: PicturePoint) {
  if (upper === null) return { kind: 'atLeast', lower } as const;
  return valueKind === 'exact'
    ? ({ kind: 'exact', value: lower } as const)
    : ({ kind: 'between', lower, upper } as const);
}
