/** Figures that only a real browser with a profile on disk can give. Times are printed, never judged: what counts is tested elsewhere. */
import { startPreview } from '../journeys/preview.ts';
import { appendFigures } from './appends.ts';
import { backupFigures } from './backups.ts';
import { coldStartFigures } from './coldStart.ts';
import { print } from './figure.ts';
import { photoFigures } from './photos.ts';
import { sealingFigures } from './sealing.ts';
import { sheetFigures } from './sheets.ts';
import { takeInFigures } from './takeIn.ts';

const wanted = new Set(process.argv.slice(2));
const isWanted = (name: string): boolean => wanted.size === 0 || wanted.has(name);
const preview = await startPreview(4641);
try {
  if (isWanted('appends')) for (const figure of await appendFigures(preview.address)) print(figure);
  if (isWanted('backups')) for (const figure of await backupFigures(preview.address)) print(figure);
  if (isWanted('sealing')) for (const figure of await sealingFigures(preview.address)) print(figure);
  if (isWanted('photos')) for (const figure of await photoFigures(preview.address)) print(figure);
  if (isWanted('sheets')) for (const figure of await sheetFigures(preview.address)) print(figure);
  if (isWanted('takeIn')) for (const figure of await takeInFigures(preview.address)) print(figure);
  // Last: it takes the server away.
  if (isWanted('coldStart')) for (const figure of await coldStartFigures(preview)) print(figure);
} finally {
  await preview.stop();
}
