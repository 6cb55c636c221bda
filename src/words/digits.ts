/** A sample number as it is written on a cassette by hand and read aloud: digit by digit. */
export const spacedDigits = (sampleNumber: string): string => sampleNumber.split('').join('\u00a0');
