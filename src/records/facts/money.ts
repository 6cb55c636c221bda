/** What measuring costs: the firm's own prices, empty at first, and what was spent. Written by the office from quotes and bills. */
import { z } from 'zod';
import { day, factId, note, recordId, text } from '../common.ts';

const amountUsd = z.number().min(0).max(1_000_000);
const price = amountUsd.nullable().describe('null = not known');

export const moneyFacts = {
  'pricesStated.v1': z
    .looseObject({
      bookId: recordId,
      fromOn: day.describe('These prices hold from this day on'),
      analysisUsd: price.describe('One sample analysed'),
      blankUsd: price.describe('One field blank analysed'),
      cassetteUsd: price,
      courierUsd: price.describe('One box'),
      rushUsd: price.describe('More for one sample that is wanted sooner'),
      pumpRentalUsd: price.describe('One pump for one day'),
      meterRentalUsd: price.describe('One flow meter for one day'),
      consultantUsd: price.describe('One day of a consultant'),
      knew: z.array(factId).max(50).optional().describe('Earlier prices that were known: these follow them'),
    })
    .describe("The firm's own prices"),
  'moneySpent.v1': z
    .looseObject({
      spendingId: recordId,
      spentOn: day,
      spentFor: z.enum([
        'analysis',
        'blank',
        'cassettes',
        'courier',
        'rush',
        'rental',
        'consultant',
        'calibration',
        'other',
      ]),
      amountUsd,
      count: z.number().int().min(0).max(10_000).nullable().describe('How many were paid for; null = not said'),
      siteId: recordId.nullable().describe('The job; null = of no single job'),
      boxId: recordId.nullable(),
      bill: text.nullable().describe('Number of the bill'),
      remark: note.nullable(),
    })
    .describe('Money was spent on measuring'),
  'spendingStruck.v1': z
    .looseObject({ spendingId: recordId, knew: z.array(factId).max(50).optional() })
    .describe('An entry of money was wrong; the envelope says why'),
} as const;
