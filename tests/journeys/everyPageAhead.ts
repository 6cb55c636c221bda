/** Looking ahead and back: can a sample prove anything, what would a day look like, what does it cost, what was found. */
import { fill, pick, type Stop, tap, to } from './everyPageSteps.ts';

/** In a book in which nothing was measured. */
export const aheadNewBookTour: readonly Stop[] = [
  pick('/prove', 'empty', { go: to('/prove'), shows: /^The answer stands here once/ }),
  pick('/prove', 'error', { go: (v) => tap(v, 'Work it out'), shows: /^Fill in: Reporting limit/ }),
  pick('/day-ahead', 'empty', { go: to('/day-ahead'), shows: /^The prediction stands here once/ }),
  pick('/day-ahead', 'error', { go: (v) => tap(v, 'Work it out'), shows: /^Fill in: Minutes of piece 1/ }),
  pick('/money', 'empty', { go: to('/money'), shows: 'No prices are entered yet.' }),
  pick('/results-by-date', 'empty', {
    go: to('/results-by-date'),
    shows: /^No task group is in the book yet|^No result of/,
  }),
];

export const aheadPracticeTour: readonly Stop[] = [
  pick('/prove', 'filled', {
    go: to('/prove?method=niosh-7082&limit=5&flow=2&cassettes=2&dust=5'),
    shows: /^Not as planned/,
    tab: true,
  }),
  pick('/day-ahead', 'filled', {
    go: async (v) => {
      await to('/day-ahead')(v);
      await v.page.getByRole('checkbox').first().check({ force: true });
      await fill(v, /^Minutes of piece 1/, '240');
    },
    shows: /^This is a prediction, not a result/,
    tab: true,
  }),
  pick('/money', 'error', {
    go: async (v) => {
      await to('/money?form=bill')(v);
      await tap(v, 'Save the bill');
    },
    shows: /^Choose: What for/,
  }),
  pick('/money', 'filled', {
    as: 'prices',
    go: to('/money?form=prices'),
    shows: 'They hold from',
  }),
  pick('/money', 'filled', {
    go: async (v) => {
      await fill(v, /^One sample analysed/, '23.50');
      await tap(v, 'Save these prices');
    },
    shows: 'State prices anew',
    tab: true,
  }),
  pick('/results-by-date', 'filled', { go: to('/results-by-date'), shows: 'The limits', tab: true }),
];
