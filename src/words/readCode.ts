/** Reading the code of a label with the camera: offered where the device can, beside the field to type in. Read by supervisor and office. */
export const en = {
  open: 'Read the code with the camera',
  close: 'Close the camera',
  opening: 'The camera is opening …',
  looking: 'Hold the code of one label in the picture.',
  picture: 'What the camera sees',
  several: 'More than one code is in the picture. Cover the others, or go closer.',
  wrong: (why: string) => `A code was read, but not taken. ${why}.`,
  took: (spaced: string) => `Read: ${spaced}`,
  trouble: {
    refused:
      'The camera may not be used here: it was refused on this device. Allow it in the settings of the browser, or type the number.',
    none: 'No camera was found. Type the number.',
    busy: 'The camera could not be opened; another program may be using it. Close that one, or type the number.',
    stopped: 'The camera was switched off. Open it again, or type the number.',
  },
};
