/** Goes up when the same facts fold into other records: derived rows of another edition are dropped and rebuilt. */
export const foldEdition = 9;
