/** The two papers that everything is printed on. Lengths in points of 1/72 inch. */
export const papers = {
  letter: { widthPt: 792, heightPt: 612 },
  a4: { widthPt: 841.89, heightPt: 595.28 },
} as const;
export type Paper = keyof typeof papers;

/** `lying` where one cassette is one row; `upright` what is read like a letter or hung on a wall. */
export type Stance = 'lying' | 'upright';
export interface Size {
  readonly widthPt: number;
  readonly heightPt: number;
}
export const sizeOf = (paper: Paper, stance: Stance): Size => {
  const { widthPt, heightPt } = papers[paper];
  return stance === 'lying' ? { widthPt, heightPt } : { widthPt: heightPt, heightPt: widthPt };
};

/** Half an inch all round: inside what every desk printer prints. The footer stands in the bottom margin's upper part. */
export const marginPt = 36;
export const footerHeightPt = 30;
export const runningHeadHeightPt = 26;
