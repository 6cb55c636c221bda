/** What others measured at such tasks, in sentences: always a range or a mean of theirs with its source, never a figure for this firm. */
import type { PublishedExposure, PublishedFigure } from '#reference/publishedExposures.ts';
import { formatList } from './quantity.ts';

const figure = (one: PublishedFigure): string => {
  if (one.kind === 'text') return 'said to be often high; no number was printed';
  if (one.kind === 'range')
    return `${one.low === null ? 'from below detection' : `from ${one.low}`} to ${one.high}\u00a0${one.unit}`;
  return `${kinds[one.kind]} ${one.value}\u00a0${one.unit}`;
};

const kinds = { mean: 'mean', meanUnder: 'mean under', geometricMean: 'geometric mean', maximum: 'highest' } as const;

const lasting = ({ lasting: of }: PublishedExposure): string => {
  if (of.kind === 'fullShift') return 'full shifts';
  if (of.kind === 'notStated') return 'how long is not said';
  return of.value === null ? 'samples of the task' : `samples of about ${of.value}\u00a0${of.unit}`;
};

const howMany = ({ samples: { count, ofCount } }: PublishedExposure): string | null => {
  if (count !== null) return count === 1 ? '1 sample' : `${count} samples`;
  return ofCount === null ? null : `${ofCount} samples in the whole study`;
};

const places = { same: null, other: 'in the other setting', notStated: 'indoors or outdoors is not said' } as const;

const lead = ({ paintLead }: PublishedExposure): string | null =>
  paintLead === null ? null : `lead in the paint: ${paintLead}`;

export const en = {
  line: (one: PublishedExposure): string => `${one.work}: ${formatList(one.figures.map(figure))}`,
  detail: (one: PublishedExposure, setting: keyof typeof places): string => {
    const parts = [lasting(one), howMany(one), places[setting], lead(one)].filter((part) => part !== null);
    return one.remark === null ? parts.join('; ') : `${parts.join('; ')}. ${one.remark}`;
  },
  source: ({ source }: PublishedExposure): string =>
    source.section === undefined ? source.title : `${source.title}, ${source.section}`,
};

export type PublishedWords = typeof en;
