/** A written initial determination as pages. */
import { resemblanceTerms } from '#findings/duties/groups/taskGroup.ts';
import { blockSentences, en } from '#words/determination.ts';
import { en as paperEn } from '#words/papers.ts';
import { formatDay, formatEstimateNumber, formatMinutes } from '#words/quantity.ts';
import type { DeterminationMeasurement, DeterminationPerson, DeterminationValues } from './determinationValues.ts';
import { gearPieces } from './gearOnPaper.ts';
import { frameOn, layOut } from './layOut.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import type { Paper } from './paper.ts';
import type { Frame } from './pieces.ts';
import { closing, fieldRows, footOf, headed, opening, paragraph, plainTable, signatureLine } from './reading.ts';

export const determinationAttachment = 'determination.json';

/** Room for the longest label on one line. */
const wide = { labelPt: 210 };

function about(frame: Frame, values: DeterminationValues): Piece[] {
  const { actionLevelUgPerM3: level, outcome } = values;
  const says = en.says[outcome](level === null ? en.actionLevelUnknown : en.limit(level));
  return [
    ...paragraph(frame, says, 'readStrong', 8),
    ...headed(frame, en.about),
    ...fieldRows(
      frame,
      [
        [en.site, values.siteName],
        [en.location, values.location],
        [en.date, formatDay(values.determinedOn, 'en')],
        [en.tasks, values.tasks.join('; ')],
        [en.job, values.jobClassification ?? en.jobNone],
        [en.setting, en.settings[values.setting]],
      ],
      wide,
    ),
  ];
}

function measuredBy({ by, from, method, reportNumbers }: DeterminationMeasurement): string {
  const report = reportNumbers.length > 0 ? [en.report(reportNumbers.join(', '))] : [];
  return [by ?? en.from[from], ...(method === null ? [] : [method]), ...report].join('; ');
}

function measurements(frame: Frame, values: DeterminationValues): Piece[] {
  const heading = headed(frame, en.measurements);
  if (values.measurements.length === 0) return [...heading, ...paragraph(frame, en.measurementsNone)];
  const { columns } = en;
  const against = [values.actionLevelUgPerM3, values.pelUgPerM3].flatMap((limit) => (limit === null ? [] : [limit]));
  const rows = values.measurements.map((one) => [
    formatDay(one.workOn, 'en'),
    one.worker ?? en.noWorker,
    measuredBy(one),
    one.sampleNumbers.join(', '),
    one.sampledMin === null ? '' : formatMinutes(one.sampledMin),
    one.twa8UgPerM3 === null ? en.average : formatEstimateNumber(one.twa8UgPerM3, 'µg/m³', { against }),
    en.regular[one.regular ?? 'notSaid'],
  ]);
  const set = [
    { head: columns.day, share: 0.14 },
    { head: columns.worker, share: 0.18, style: 'plainStrong' as const },
    { head: columns.from, share: 0.2 },
    { head: columns.samples, share: 0.12 },
    { head: columns.minutes, share: 0.11 },
    { head: columns.average, share: 0.15, style: 'plainStrong' as const },
    { head: columns.regular, share: 0.1 },
  ];
  return [...heading, ...plainTable(frame, 'measurements', set, rows)];
}

function relied(frame: Frame, values: DeterminationValues): Piece[] {
  const heading = headed(frame, en.relied);
  if (values.relied.length === 0) return [...heading, ...paragraph(frame, en.reliedNotNeeded)];
  return [
    ...heading,
    ...values.relied.flatMap(({ workOn, reliedOn, ageDays, answers, ownFirm }) => [
      ...paragraph(frame, en.reliedOn(workOn, reliedOn, ageDays), 'read', 5),
      ...fieldRows(
        frame,
        [
          ...resemblanceTerms.map((term): [string, string] => [en.terms[term], en.alike[answers[term]]]),
          [en.ownFirm.label, en.ownFirm[ownFirm]],
        ],
        wide,
      ),
    ]),
  ];
}

const information = (frame: Frame, values: DeterminationValues): Piece[] => [
  ...headed(frame, en.information),
  ...fieldRows(
    frame,
    [
      [en.observations, values.observations ?? en.none],
      [en.earlier, values.earlierMeasurements ?? en.none],
      [en.complaints, values.complaints ?? en.none],
    ],
    wide,
  ),
];

function people(frame: Frame, id: string, persons: readonly DeterminationPerson[], shownAs: 'name' | 'identifier') {
  const columns = [
    { head: en.people[shownAs], share: 0.4, style: 'plainStrong' as const },
    { head: en.people.job, share: 0.3 },
    { head: en.people.employer, share: 0.3 },
  ];
  const rows = persons.map(({ shown, jobClassification, employer }) => [
    shown,
    jobClassification ?? en.noJob,
    employer ?? en.ownEmployer,
  ]);
  return plainTable(frame, id, columns, rows);
}

function who(frame: Frame, { monitored, standsFor, shownAs }: DeterminationValues): Piece[] {
  return [
    ...headed(frame, en.monitored),
    ...people(frame, 'monitored', monitored, shownAs),
    ...headed(frame, en.standsFor),
    ...(standsFor.length === 0 ? paragraph(frame, en.standsForNone) : people(frame, 'standsFor', standsFor, shownAs)),
  ];
}

function doubts(frame: Frame, { blocks, measurements: measured }: DeterminationValues): Piece[] {
  if (blocks.length === 0) return [];
  const dayOf = (id: string | null) => measured.find(({ measurementId }) => measurementId === id)?.workOn ?? null;
  const said = blocks.map(({ key, measurementId }) => en.blockOf(blockSentences[key], dayOf(measurementId)));
  return [
    ...headed(frame, en.against),
    ...[...new Set(said), en.againstNote].flatMap((text) => paragraph(frame, text, 'read', 2)),
  ];
}

function closes(frame: Frame, values: DeterminationValues): Piece[] {
  const { sign } = paperEn;
  return [
    ...headed(frame, en.cautions),
    ...[...en.cautionLines[values.outcome], en.cautionAlways].flatMap((text) => paragraph(frame, text, 'read', 2)),
    ...paragraph(frame, `${en.written}: ${values.writtenBy}`, 'readStrong', 10),
    signatureLine(frame, [sign.signature, sign.date], 6),
    ...(values.document === null ? [] : paragraph(frame, en.basis(values.document), 'body', 8)),
    ...closing(frame, paperEn, values, determinationAttachment),
  ];
}

export function determinationPages(values: DeterminationValues, paper: Paper, measure: Measure): PageModel {
  const frame = frameOn(measure, paper, 'upright');
  const title = en.title[values.outcome];
  const lead = en.lead(values.siteName, values.determinedOn);
  return layOut(measure, {
    paper,
    stance: 'upright',
    title: en.documentTitle(title, values.siteName, values.determinedOn),
    author: values.firmName,
    across: values.practice ? paperEn.example : null,
    sections: [
      {
        lang: paperEn.lang,
        pieces: [
          ...opening(frame, paperEn, values, { title, lead: `${values.firmName}. ${lead}`, revision: null, why: null }),
          ...about(frame, values),
          ...measurements(frame, values),
          ...gearPieces(frame, values.gearDoubts),
          ...relied(frame, values),
          ...information(frame, values),
          ...who(frame, values),
          ...doubts(frame, values),
          ...closes(frame, values),
        ],
        goesOn: [paperEn.goesOn(title), values.firmName, values.siteName].join(' · '),
        foot: footOf(paperEn, values, title, null),
      },
    ],
  });
}
