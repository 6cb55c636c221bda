/** What the method says of it: volume, what a cassette can tell from nothing, and how long a filter lasts in dust. */
import type { RangeOfMethod, SampleAhead } from '#findings/season/sampleAhead.ts';
import { Figure } from '#parts/Figure.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { isCitable } from '#reference/source.ts';
import { en } from '#words/proveScreen.ts';
import { formatEstimateNumber, formatMinutes } from '#words/quantity.ts';

const words = en.volume;
const loadings = en.loading;

const rangeText = (range: RangeOfMethod | null): string =>
  range === null ? words.notStated : `${words.stands[range.stands]} ${words.range(range.low, range.high)}`;

/** Only what was read is shown as the method's own. */
const caution = (range: { readonly source: RangeOfMethod['source'] } | null): string =>
  range === null || isCitable(range.source) ? '' : ` ${words.fromMemory}`;

export function OfMethod({ ahead }: { readonly ahead: SampleAhead }) {
  const { volume, leastSeen, volumeRange, twaVolumeRange, loading } = ahead;
  const forAverage = twaVolumeRange === null ? '' : ` ${words.forAverage(twaVolumeRange.low, twaVolumeRange.high)}`;
  return (
    <>
      <Figure
        label={words.label}
        value={formatEstimateNumber(volume.estimate, 'L')}
        unit="L"
        note={`${rangeText(volumeRange)}${caution(volumeRange)}${forAverage}${caution(twaVolumeRange)}`}
      >
        <WorkingView working={volume} />
      </Figure>
      <Figure
        label={words.leastSeen}
        value={formatEstimateNumber(leastSeen.estimate, 'µg/m³')}
        unit="µg/m³"
        note={words.leastSeenNote}
      >
        <WorkingView working={leastSeen} />
      </Figure>
      {loading !== null && <Loading loading={loading} />}
    </>
  );
}

function Loading({ loading }: { readonly loading: NonNullable<SampleAhead['loading']> }) {
  const { minutesToLimit, changeAfterMin, cassettesCount, maxLoadMg, bound } = loading;
  const { estimate } = minutesToLimit;
  const note = [
    ...(changeAfterMin === null
      ? [loadings.lasts]
      : [loadings.change(changeAfterMin, cassettesCount), loadings.bound(bound)]),
    loadings.limit(maxLoadMg) + caution(loading),
    loadings.guess,
  ].join(' ');
  return (
    <Figure
      label={loadings.label}
      value={formatMinutes(estimate.kind === 'exact' ? estimate.value : estimate.lower)}
      note={note}
    >
      <WorkingView working={minutesToLimit} />
    </Figure>
  );
}
