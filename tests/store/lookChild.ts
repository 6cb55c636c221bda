/** Looks into one file on an empty device, in a process whose heap is small: what the file holds must not lie in memory twice. */
import { openAsBlob } from 'node:fs';
import { lookInto } from '#store/handOver/looking.ts';
import { openBooks } from '#store/opening.ts';
import { newDevice, pickUp, testClock } from './device.ts';

const [path = ''] = process.argv.slice(2);
testClock('2026-11-25T11:00:00.000Z');
await pickUp(newDevice());
await openBooks();
const looked = await lookInto(await openAsBlob(path));
const newCount = looked.kind === 'preview' ? looked.newCount : -1;
const maxRssMB = Math.round(process.resourceUsage().maxRSS / 1024);
process.stdout.write(JSON.stringify({ kind: looked.kind, newCount, maxRssMB }));
process.exit(0);
