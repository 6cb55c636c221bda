/** The exposure record as pages: fields, tables, workings indented like a hand calculation, what was struck. */
import { en as exposure } from '#words/exposure.ts';
import { en } from '#words/exposureRecord.ts';
import { en as paperEn } from '#words/papers.ts';
import { formatDay } from '#words/quantity.ts';
import type { ExposureRecordValues, PrintedSection } from './exposureRecordValues.ts';
import type { PrintedWorking, WorkingLine } from './exposureWorkings.ts';
import { frameOn, layOut } from './layOut.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import type { Paper } from './paper.ts';
import { type Frame, textPieces } from './pieces.ts';
import { closing, fieldRows, footOf, headed, opening, paragraph, plainTable, signatureLine } from './reading.ts';

export const exposureRecordAttachment = 'exposure-record.json';

/** Smaller than what workers read: a record has many lines. */
const dense = { labelPt: 170, style: 'plain', labelStyle: 'label', underPt: 2 } as const;

const sectionPieces = (frame: Frame, { heading, fields, lines }: PrintedSection): Piece[] => [
  ...headed(frame, heading),
  ...fieldRows(frame, fields, dense),
  ...lines.flatMap((line) => paragraph(frame, line, 'plain', 2)),
];

function standsFor(frame: Frame, { standsFor: rows, shownAs }: ExposureRecordValues): Piece[] {
  const { stands } = en;
  const columns = [
    { head: stands[shownAs], share: 0.4, style: 'plainStrong' as const },
    { head: stands.job, share: 0.3 },
    { head: stands.employer, share: 0.3 },
  ];
  return [
    ...headed(frame, stands.heading),
    ...(rows.length === 0
      ? paragraph(frame, stands.nobody, 'plain', 2)
      : plainTable(frame, 'standsFor', columns, rows)),
  ];
}

function minutes(frame: Frame, { minutes: rows }: ExposureRecordValues): Piece[] {
  const text = exposure.minutes;
  const columns = [
    { head: text.when, share: 0.24 },
    { head: text.length, share: 0.08, align: 'right' as const },
    { head: text.what, share: 0.24 },
    { head: en.minutes.why, share: 0.3 },
    { head: text.figure, share: 0.14, align: 'right' as const, style: 'plainStrong' as const },
  ];
  return [
    ...headed(frame, en.minutes.heading),
    ...(rows.length === 0
      ? paragraph(frame, en.minutes.none, 'plain', 2)
      : plainTable(frame, 'minutes', columns, rows)),
  ];
}

const indentPt = 14;
/** A deeper sum is not indented further: the line would have no room. */
const deepest = 12;

function workingLine(frame: Frame, { depth, text }: WorkingLine): Piece[] {
  const inPt = indentPt * Math.min(depth, deepest);
  const inner: Frame = { ...frame, xPt: frame.xPt + inPt, widthPt: frame.widthPt - inPt };
  return textPieces(inner, text, { tag: 'P', style: 'sum', gapBeforePt: 0 });
}

const working = (frame: Frame, { title, lines }: PrintedWorking): Piece[] => [
  ...textPieces(frame, title, { tag: 'P', style: 'sumStrong', gapBeforePt: 7, keepWithNext: true }),
  ...lines.flatMap((line) =>
    workingLine({ ...frame, xPt: frame.xPt + indentPt, widthPt: frame.widthPt - indentPt }, line),
  ),
];

function workings(frame: Frame, { workings: all }: ExposureRecordValues): Piece[] {
  const { heading, intro, none } = en.workings;
  return [
    ...headed(frame, heading),
    ...paragraph(frame, all.length === 0 ? none : intro, 'plain', 2),
    ...all.flatMap((one) => working(frame, one)),
  ];
}

function closes(frame: Frame, values: ExposureRecordValues): Piece[] {
  const { struck, keeping } = en;
  const said = values.struck.length === 0 ? [struck.none] : values.struck;
  const { sign } = paperEn;
  return [
    ...headed(frame, struck.heading),
    ...said.flatMap((line) => paragraph(frame, line, 'plain', 2)),
    ...headed(frame, keeping.heading),
    ...keeping.lines.flatMap((line) => paragraph(frame, line, 'plain', 2)),
    signatureLine(frame, [en.signed, sign.signature, sign.date]),
    ...closing(frame, paperEn, values, exposureRecordAttachment),
  ];
}

export function exposureRecordPages(values: ExposureRecordValues, paper: Paper, measure: Measure): PageModel {
  const frame = frameOn(measure, paper, 'upright');
  const { worker, workOn, revision, why } = values;
  const lead = en.lead(worker, workOn);
  return layOut(measure, {
    paper,
    stance: 'upright',
    title: en.documentTitle(worker, workOn, revision),
    author: values.firmName,
    across: values.practice ? paperEn.example : null,
    sections: [
      {
        lang: paperEn.lang,
        pieces: [
          ...opening(frame, paperEn, values, { title: en.title, lead: `${values.firmName}. ${lead}`, revision, why }),
          ...sectionPieces(frame, values.result),
          ...(values.gearFoundBad === null ? [] : sectionPieces(frame, values.gearFoundBad)),
          ...sectionPieces(frame, values.whom),
          ...minutes(frame, values),
          ...standsFor(frame, values),
          ...values.sections.flatMap((section) => sectionPieces(frame, section)),
          ...workings(frame, values),
          ...closes(frame, values),
        ],
        goesOn: [paperEn.goesOn(en.title), worker, formatDay(workOn, 'en')].join(' · '),
        foot: footOf(paperEn, values, en.title, revision),
      },
    ],
  });
}
