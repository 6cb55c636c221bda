/** Runs bad files one after the other, by name, and tells of each: the process that a hang or a full heap is allowed to kill. */
import { corpus } from './corpus.ts';
import { deviceWith, judged } from './judging.ts';

export interface Verdict {
  readonly name: string;
  /** Empty: as expected. */
  readonly wrong: string;
  /** Of the processor: a busy machine is no defect, a long way to a refusal is. */
  readonly tookMs: number;
}
const say = (line: Partial<Verdict>): void => void process.stdout.write(`${JSON.stringify(line)}\n`);

const [first = '0'] = process.argv.slice(2);
for (const bad of corpus.slice(Number(first))) {
  const held = await deviceWith(bad.into ?? 'book');
  const file = await bad.file();
  // From here on its time runs.
  say({ name: bad.name });
  const started = process.cpuUsage();
  let wrong: string;
  try {
    wrong = await judged(bad, file, held);
  } catch (error) {
    wrong = `it threw ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
  }
  const { user, system } = process.cpuUsage(started);
  say({ name: bad.name, wrong, tookMs: Math.round((user + system) / 1000) });
}
process.stdout.write(`${JSON.stringify({ maxRssMB: Math.round(process.resourceUsage().maxRSS / 1024) })}\n`);
process.exit(0);
