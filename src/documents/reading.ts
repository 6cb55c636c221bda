/** What papers that are read like a letter are built of: headings with a line under them, paragraphs, labelled values, plain tables. */
import { wallTimeOf } from '#core/calendar.ts';
import type { PaperWords } from '#words/papers.ts';
import type { Foot } from './layOut.ts';
import { baselineOf, heightPtOf, placeLines, type SetLine, setLines } from './lines.ts';
import type { Occasion } from './occasion.ts';
import type { Piece } from './paginate.ts';
import { type Frame, rule, rulePiece, textPieces } from './pieces.ts';
import { needsNumbers } from './printable.ts';
import { gutterPt, tablePieces } from './table.ts';
import { ink, type StyleName, styles } from './typography.ts';

export const paragraph = (frame: Frame, text: string, style: StyleName = 'read', gapBeforePt = 3): Piece[] =>
  textPieces(frame, text, { tag: 'P', style, gapBeforePt });

/** A heading, with a line of the accent under it, on one page with what follows. */
export function headed(frame: Frame, text: string, gapBeforePt = 13): Piece[] {
  const [last, ...before] = textPieces(frame, text, {
    tag: 'H2',
    style: 'readHeading',
    gapBeforePt,
    keepWithNext: true,
  }).reverse();
  if (!last) return [];
  const lined: Piece = {
    ...last,
    heightPt: last.heightPt + 3,
    place: (topPt) => [
      ...last.place(topPt),
      rule(frame.xPt, topPt + last.heightPt + 1, frame.widthPt, 0.75, ink.accent),
    ],
  };
  return [...before.reverse(), lined];
}

export interface Opening {
  readonly title: string;
  readonly lead: string;
  readonly revision: string | null;
  readonly why: string | null;
}

const before = (revision: string): string => String(Number(revision) - 1);

/** Title, what it is about, that it is an example, and what it replaces. */
export function opening(frame: Frame, words: PaperWords, occasion: Occasion, said: Opening): Piece[] {
  const { title, lead, revision, why } = said;
  return [
    ...textPieces(frame, title, { tag: 'H1', style: 'title', gapBeforePt: 0 }),
    ...paragraph(frame, lead, 'lead', 3),
    rulePiece(frame, 5, 1.5, ink.accent),
    ...(occasion.practice ? paragraph(frame, words.exampleNote, 'readStrong', 6) : []),
    ...(revision === null || revision === '1'
      ? []
      : paragraph(frame, words.replaces(revision, before(revision), why), 'readStrong', 6)),
  ];
}

const linesTogetherCount = 8;

/** A label and its value on one line, ruled off; a long value goes on below, over the page if it must. */
export function fieldRows(
  frame: Frame,
  rows: readonly (readonly [label: string, value: string])[],
  { labelPt = 130, style = 'read' as StyleName, labelStyle = 'readLabel' as StyleName, underPt = 4 } = {},
): Piece[] {
  const { measure, xPt, widthPt } = frame;
  const place = (lines: readonly SetLine[], x: number, firstBaselinePt: number) =>
    placeLines(measure, lines, { xPt: x, firstBaselinePt, widthPt, align: 'left' });
  return rows.flatMap(([label, value]) => {
    const labelled = setLines(measure, label, labelStyle, labelPt - gutterPt);
    const lines = setLines(measure, value, style, widthPt - labelPt);
    const parts: SetLine[][] = [];
    for (let at = 0; at < lines.length; at += linesTogetherCount) parts.push(lines.slice(at, at + linesTogetherCount));
    return parts.map((part, index): Piece => {
      const first = index === 0 ? labelled : [];
      const isLast = index === parts.length - 1;
      const heightPt = Math.max(heightPtOf(first), heightPtOf(part)) + (isLast ? underPt : 0);
      return {
        heightPt,
        gapBeforePt: index === 0 ? underPt / 2 : 0,
        keepWithNext: false,
        repeats: null,
        place: (topPt) => {
          const baselinePt = topPt + baselineOf(style);
          const both = [...place(first, xPt, baselinePt), ...place(part, xPt + labelPt, baselinePt)];
          return [
            { kind: 'text', tag: 'P', lines: both },
            ...(isLast ? [rule(xPt, topPt + heightPt - 1, widthPt, 0.5, ink.faint)] : []),
          ];
        },
      };
    });
  });
}

export interface PlainColumn {
  readonly head: string;
  /** Share of the width. */
  readonly share: number;
  readonly align?: 'left' | 'right';
  readonly style?: StyleName;
}

/** A table of texts; its head repeats on every page. `rowPaddingPt` makes room to write in. */
export function plainTable(
  frame: Frame,
  id: string,
  columns: readonly PlainColumn[],
  rows: readonly (readonly string[])[],
  { rowPaddingPt = 2, gapBeforePt = 5 } = {},
): Piece[] {
  const { measure, xPt, widthPt } = frame;
  const total = columns.reduce((sum, { share }) => sum + share, 0);
  const widths = columns.map(({ share }) => (widthPt * share) / total);
  const set = columns.map(({ head, align = 'left' }, at) => ({
    widthPt: widths[at] ?? 0,
    align,
    head: setLines(measure, head, 'columnHead', (widths[at] ?? 0) - gutterPt),
  }));
  const cells = rows.map((row) =>
    row.map((text, at) => ({
      lines: text === '' ? [] : setLines(measure, text, columns[at]?.style ?? 'plain', (widths[at] ?? 0) - gutterPt),
      spanCount: 1,
    })),
  );
  return tablePieces({ id, measure, xPt, columns: set, rowPaddingPt, writeOnPt: null }, cells, gapBeforePt);
}

/** Lines to sign on: each with its label below. */
export function signatureLine(frame: Frame, labels: readonly string[], gapBeforePt = 12): Piece {
  const { measure, xPt, widthPt } = frame;
  const gapPt = 16;
  const eachPt = (widthPt - gapPt * (labels.length - 1)) / labels.length;
  const label = styles.label.leadingPt;
  const heightPt = 24 + label;
  return {
    heightPt,
    gapBeforePt,
    keepWithNext: false,
    repeats: null,
    place: (topPt) =>
      labels.flatMap((text, at) => {
        const x = xPt + at * (eachPt + gapPt);
        const place = {
          xPt: x,
          widthPt: eachPt,
          firstBaselinePt: topPt + 24 + baselineOf('label'),
          align: 'left' as const,
        };
        const lines = placeLines(measure, setLines(measure, text, 'label', eachPt).slice(0, 1), place);
        return [rule(x, topPt + 24, eachPt, 0.75, ink.rule), { kind: 'text' as const, tag: 'P' as const, lines }];
      }),
  };
}

const textsOf = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : [];
};

/** Small print at the end: what is attached, the heads in full, and what square brackets stand for where there are any. */
export function closing(frame: Frame, words: PaperWords, values: Occasion, attachment: string): Piece[] {
  const small = (text: string, gapBeforePt: number) => paragraph(frame, text, 'small', gapBeforePt);
  const isNumbered = textsOf(values).some((text) => needsNumbers(text, frame.measure.holds));
  const heads = values.heads.map(({ factId, link }) => `${factId} ${link}`).join(', ');
  return [
    ...(isNumbered ? paragraph(frame, words.bracketNote, 'body', 8) : []),
    ...small(`${words.attached(attachment)} ${words.heads(heads)}`, 8),
  ];
}

export function footOf(words: PaperWords, values: Occasion, title: string, revision: string | null): Foot {
  const { day, time } = wallTimeOf(values.issuedInstant, values.zone);
  const made = [title, words.made(day, time), ...(revision === null ? [] : [words.revision(revision)])].join(' · ');
  const { app, rules, formulas } = values.editions;
  const links = values.heads.map(({ factId, link }) => `${factId} ${link.slice(0, 16)}`).join(', ');
  return {
    left: values.practice ? `${words.example} · ${made}` : made,
    page: words.page,
    basis: [words.editions(app, rules, formulas), words.headsShort(links)].join(' · '),
  };
}
