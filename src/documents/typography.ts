/** The typography of every paper: the ink, the rules and the accent of the screen (src/parts/tokens.css). One place. */
export const ink = {
  text: '#1d1b18',
  quiet: '#4a463f',
  accent: '#53284f',
  rule: '#615c53',
  faint: '#d3cdbf',
  example: '#ece9e2',
};

export interface TextStyle {
  readonly face: 'regular' | 'bold';
  readonly sizePt: number;
  readonly leadingPt: number;
  readonly colour: string;
}

const style = (face: TextStyle['face'], sizePt: number, leadingPt: number, colour: string): TextStyle => ({
  face,
  sizePt,
  leadingPt,
  colour,
});

export const styles = {
  title: style('bold', 23, 28, ink.accent),
  lead: style('regular', 12, 17, ink.text),
  heading: style('bold', 9, 14, ink.accent),
  label: style('regular', 7.5, 12.5, ink.quiet),
  value: style('regular', 9.5, 12.5, ink.text),
  strong: style('bold', 9.5, 12.5, ink.text),
  body: style('regular', 8.5, 12, ink.text),
  bodyStrong: style('bold', 8.5, 12, ink.text),
  columnHead: style('bold', 7.5, 9.5, ink.text),
  unit: style('regular', 7.5, 9.5, ink.quiet),
  number: style('bold', 11.5, 13, ink.text),
  figure: style('regular', 10, 13, ink.text),
  plain: style('regular', 9, 13, ink.text),
  plainStrong: style('bold', 9, 13, ink.text),
  word: style('regular', 8, 13, ink.text),
  quietWord: style('regular', 8, 13, ink.quiet),
  small: style('regular', 6.5, 8.5, ink.quiet),
  read: style('regular', 10.5, 15, ink.text),
  readStrong: style('bold', 10.5, 15, ink.text),
  readLabel: style('regular', 9, 15, ink.quiet),
  readHeading: style('bold', 11, 16, ink.accent),
  big: style('bold', 32, 40, ink.text),
  statement: style('bold', 13, 18, ink.text),
  sum: style('regular', 8.5, 12, ink.text),
  sumStrong: style('bold', 8.5, 12, ink.text),
  signDanger: style('bold', 110, 120, ink.text),
  signLegend: style('bold', 33, 42, ink.text),
  signQuiet: style('regular', 14, 20, ink.text),
  labelDanger: style('bold', 30, 38, ink.text),
  labelLegend: style('bold', 20, 26, ink.text),
  labelQuiet: style('regular', 11, 15.5, ink.text),
  cassette30: style('bold', 30, 36, ink.text),
  cassette25: style('bold', 25, 30, ink.text),
  cassette21: style('bold', 21, 25, ink.text),
  cassette18: style('bold', 18, 21, ink.text),
  cassette15: style('bold', 15, 17.5, ink.text),
  cassette12: style('bold', 12, 14, ink.text),
  cassette10: style('bold', 10, 11.5, ink.text),
  cassette8: style('bold', 8, 9.5, ink.text),
  tag11: style('regular', 11, 14, ink.text),
  tag11Strong: style('bold', 11, 14, ink.text),
  tag9: style('regular', 9, 11, ink.text),
  tag9Strong: style('bold', 9, 11, ink.text),
  tag75: style('regular', 7.5, 9, ink.text),
  tag75Strong: style('bold', 7.5, 9, ink.text),
  tag6: style('regular', 6, 7.2, ink.text),
  tag6Strong: style('bold', 6, 7.2, ink.text),
} as const satisfies Record<string, TextStyle>;
export type StyleName = keyof typeof styles;
