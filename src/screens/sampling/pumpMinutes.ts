/** What a pump's own display can show in minutes; the journal holds no more than this. */
export const pumpMinRange = { optional: true, most: 6000 } as const;
