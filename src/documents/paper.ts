/** The two papers a custody sheet is printed on, lying, so that one cassette is one row. Lengths in points of 1/72 inch. */
export const papers = {
  letter: { widthPt: 792, heightPt: 612 },
  a4: { widthPt: 841.89, heightPt: 595.28 },
} as const;
export type Paper = keyof typeof papers;

/** Half an inch all round: inside what every desk printer prints. The footer stands in the bottom margin's upper part. */
export const marginPt = 36;
export const footerHeightPt = 30;
export const runningHeadHeightPt = 26;
