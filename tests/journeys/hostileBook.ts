/**
 * A book as a hostile or careless hand would write it: forty names that try to be markup, code, addresses, formulas or keys of objects,
 * that turn the direction of writing, or that never end. Each stands on a worker, a site, a pump and a sample of its own.
 */
import type { NewFact } from '#records/fact.ts';
import { writeBookText } from '#records/fileFormat.ts';
import { sampleNumberOf } from '#records/sampleNumber.ts';
import { at, ids, journal, wanted, workOn, zone } from '#tests/records/facts.ts';

const run = 'globalThis.ran=1';

export const hostileNames: readonly string[] = [
  `<script>${run}</script>`,
  `<img src=x onerror="${run}">`,
  `<svg onload="${run}"></svg>`,
  `"><svg/onload=${run}>`,
  `'><img src=x onerror='${run}'>`,
  `<iframe srcdoc="<script>parent.ran=1</script>"></iframe>`,
  `<a href="javascript:${run}">Press here</a>`,
  `javascript:${run}`,
  `data:text/html,<script>${run}</script>`,
  `</title></h1></main><script>${run}</script>`,
  `</style><style>body{display:none}</style>`,
  `<base href="https://example.org/">`,
  `<meta http-equiv="refresh" content="0;url=https://example.org/">`,
  `<form action="https://example.org/"><button>Save</button></form>`,
  `<object data="https://example.org/x"></object>`,
  `<math><mi xlink:href="javascript:${run}">x</mi></math>`,
  `<!-- <b>not shown</b> -->`,
  `<![CDATA[ ]]> &lt;b&gt; &amp;amp; &#x3C;`,
  `{{constructor.constructor('${run}')()}}`,
  `\${${run}}`,
  `');${run};('`,
  `\\u003cscript\\u003e${run}\\u003c/script\\u003e`,
  `%3Cscript%3E${run}%3C/script%3E`,
  '=HYPERLINK("https://example.org/","Press here")',
  "+1+cmd|' /C calc'!A0",
  "Robert'); DROP TABLE samples; --",
  '__proto__',
  'constructor',
  'toString',
  'null',
  'undefined',
  '#/sample/x?do=void',
  '../../../etc/passwd',
  '+',
  'Ana\u202EelttiL\u202C Key',
  'Zero\u200Bwidth\u200D\uFEFFjoiner\u2028and a line\u2029and another',
  'Z\u0335\u0321\u0322a\u0334\u0315\u031Bl\u0337\u0316g\u0336\u0340o\u0338\u0345 hears',
  'شركة الطلاء ٣٦ \u{1F469}\u{1F3FD}\u200D\u{1F3ED} ﷽',
  'İstanbul ışığı ß ſ ﬁ 𝓕𝓾𝓵𝓵',
  'W'.repeat(400),
];

/** Crockford letters only, so that it is a record id: 'w00000000007'. */
const idOf = (kind: string, at: number): string => `${kind}${String(at).padStart(11, '0')}`;
export const hostileIds = {
  shift: (index: number): string => `${idOf('s', index)}.${workOn}`,
  sample: (index: number): string => idOf('c', index),
  box: ids.box,
};

function factsOf(name: string, index: number): readonly NewFact[] {
  const [workerId, siteId, pumpId, lotId] = ['p', 's', 'q', 'h'].map((kind) => idOf(kind, index)) as [
    string,
    string,
    string,
    string,
  ];
  const sampleId = hostileIds.sample(index);
  const shiftId = hostileIds.shift(index);
  const person = { name, identifier: null, language: 'en', jobClassificationId: null, employer: null } as const;
  const site = { name, stateCode: 'OH', setting: 'indoors', altitudeM: 230, zone } as const;
  return [
    wanted('personAdded.v1', { personId: workerId, ...person }),
    wanted('siteAdded.v1', { siteId, ...site }),
    wanted('pumpAdded.v1', { pumpId, serial: name, model: name }),
    wanted('lotAdded.v1', { lotId, lotNumber: name, media: name, expiresOn: null }),
    wanted('shiftOpened.v1', { shiftId, siteId, workOn }),
    wanted(
      'samplePrepared.v1',
      {
        ...{ sampleId, shiftId, workerId, pumpId, lotId, sampleNumber: sampleNumberOf('12', index) },
        ...{ taskIds: ['handScraping'], jobClassificationId: null, follows: null },
      },
      { at: at('12:00') },
    ),
    wanted('pumpPutOn.v1', { sampleId }, { at: at('12:30') }),
    wanted('remarkMade.v1', { sampleId, text: name }, { at: at('13:00') }),
    wanted('pumpStopped.v1', { sampleId, pumpMin: 120 }, { at: at('14:30') }),
    wanted('cassetteSealed.v1', { sampleId, labelled: true, lockedIn: name, lockedById: null }, { at: at('14:40') }),
  ];
}

const [first = ''] = hostileNames;
const box: readonly NewFact[] = [
  wanted('laboratoryAdded.v1', { laboratoryId: ids.laboratory, name: first, address: first, accreditation: first }),
  wanted(
    'boxPacked.v1',
    {
      ...{ boxId: ids.box, siteId: idOf('s', 1), laboratoryId: ids.laboratory, samplerId: idOf('p', 1) },
      ...{ sampleIds: hostileNames.map((_, at) => hostileIds.sample(at + 1)), analysis: first, methodId: null },
      ...{ reportingLimitUg: 2.5, includeWallDeposit: true, callBeforeReanalysis: true, turnaround: first },
      ...{ workersShownAs: 'name', remark: first },
    },
    { at: at('15:00') },
  ),
];

/** The book as its plain text, which is taken in like any backup. */
export function hostileBackup(): string {
  const opened = wanted('bookOpened.v1', { bookId: ids.book, firmName: first, practice: false });
  const facts = [opened, ...hostileNames.flatMap((name, at) => factsOf(name, at + 1)), ...box];
  return writeBookText({ bookId: ids.book, practice: false, writtenBy: 'a test' }, journal(facts));
}
