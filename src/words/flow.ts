/** The flow check: pump, flow meter and a cassette in line. */
import { formatDay, formatQuantity } from './quantity.ts';

export const purposes = ['before', 'after', 'between'] as const;
type Purpose = (typeof purposes)[number];

export const en = {
  heading: {
    before: 'Check the flow before',
    after: 'Check the flow after',
    between: 'Check the flow between two cassettes',
  } satisfies Record<Purpose, string>,
  pumpAsked: (serial: string) => `Pump ${serial}:`,
  purpose: 'This check is',
  purposes: {
    before: 'before the shift',
    after: 'after the shift',
    between: 'between two cassettes of one worker',
  } satisfies Record<Purpose, string>,
  pumpStands: {
    notChecked: 'no flow check today',
    checked: (flow: string, time: string) => `${flow} at ${time}`,
    onWorker: (worker: string) => `on ${worker} now`,
    wantsAfter: (worker: string) => `came off ${worker}, wants a flow after`,
  },
  howDone: 'Flow meter, cassette in line',
  howDoneText: (meter: string, inLine: string) => `${meter}; ${inLine}.`,
  change: 'Change flow meter or cassette',
  inLine: 'What is in line with the pump',
  inLineOptions: {
    representativeCassette: 'A cassette of the same lot, kept for flow checks',
    sampleCassette: 'The cassette that samples',
    nothing: 'Nothing: the meter straight on the pump',
  },
  inLineShort: (inLine: 'representativeCassette' | 'sampleCassette' | 'nothing', lot: string | null) =>
    ({
      representativeCassette: `a cassette of lot ${lot ?? '?'} in line`,
      sampleCassette: `the sampling cassette, lot ${lot ?? '?'}, in line`,
      nothing: 'nothing in line',
    })[inLine],
  reading: (n: number) => `Reading ${n}`,
  readingHint: 'Lowest and highest the float shows. Steady: the first field is enough',
  moreReadings: 'Add another reading',
  readingMissing: 'Write at least one reading',
  readingTurned: (n: number) => `Reading ${n}: the lowest is above the highest; write them the other way round`,
  readingHalf: (n: number) => `Reading ${n}: write the lowest too`,
  temperature: 'Air temperature at the check',
  temperatureHint: 'This meter reads differently in warm and cold air',
  pressure: 'Station pressure',
  pressureHint: 'Not the weather report: that one is reduced to sea level',
  pressureFromAltitude: (altitudeM: number) =>
    `From the site's altitude, ${formatQuantity(altitudeM, 'm')}, by the standard atmosphere. Write over it if a barometer is at hand.`,
  pressureUnknown: 'The altitude of the site is not written down. Without a pressure a low result proves nothing.',
  figure: {
    before: 'Flow before',
    after: 'Flow after',
    between: 'Flow between',
  } satisfies Record<Purpose, string>,
  noFigure: 'The flow stands here as soon as a reading is typed.',
  protective: (flow: string) => `At the low end ${flow}`,
  outsideSave: 'It can still be saved: what was read was read.',
  save: 'Save this flow check',
  saveNext: 'Save, next pump',
  saved: (pump: string, flow: string) => `Pump ${pump}: ${flow} is saved.`,
  noFlow: 'no figure',
  ready: 'Back to the day',
  today: 'Checked today',
  noneToday: 'No flow check yet today.',
  checkLine: (pump: string, flow: string) => `Pump ${pump}: ${flow}`,
  checkDetail: (purpose: Purpose, time: string, day: string | null) =>
    `${en.figure[purpose]}, ${time}${day === null ? '' : ` on ${formatDay(day, 'en', 'short')}`}`,
  moment: 'Checked at another time',
  remark: 'Remark',
  noShift: 'This shift is not in the book on this device.',
};

export type FlowWords = typeof en;
