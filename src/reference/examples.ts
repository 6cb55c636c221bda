/** Worked examples that somebody published: what the arithmetic is checked against, in the tests and before the user's eyes. */
import { z } from 'zod';
import common from '#shared/examples/commonPractice.json';
import published from '#shared/examples/published.json';
import { period } from './dated.ts';
import { range, readOnce, source } from './source.ts';

const number = z.number();

export const example = z.strictObject({
  id: z.string(),
  title: z.string(),
  formula: z.string().describe('Name of the formula in core/formulary.ts'),
  inputs: z
    .record(z.string(), z.union([number, z.array(number).min(1)]))
    .describe('By symbol, in the units of the formula'),
  unit: z.string().describe('Unit of the expected value as published'),
  expected: number,
  tolerance: number.min(0),
  toleranceReason: z.string().min(5),
  printed: z.string().describe('As the source prints it'),
  effective: period,
  source,
});
export type PublishedExample = z.infer<typeof example>;

export const examplesFile = z.strictObject({ examples: z.array(example).min(1) });
export const commonPracticeFile = z.strictObject({
  effective: period,
  chargeLasts: range('h').describe('How long a full charge of a personal pump lasts'),
  examples: z.array(example).min(1),
});

const readPublished = readOnce(examplesFile, published);
const readCommon = readOnce(commonPracticeFile, common);

export const publishedExamples = (): readonly PublishedExample[] => readPublished().examples;
/** Common practice without a source: checked all the same, and marked so. */
export const commonPractice = (): readonly PublishedExample[] => readCommon().examples;
export const chargeLasts = () => readCommon().chargeLasts;
