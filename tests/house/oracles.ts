/**
 * Independent programs that tests hold our documents against. A missing one is named and its checks are left out; with CI=true a
 * missing one is a failure.
 */
import { spawnSync } from 'node:child_process';

export type OracleName = 'pdfinfo' | 'pdftotext' | 'pdffonts' | 'pdfdetach' | 'pdftoppm' | 'qpdf';

/** Runs the program; standard output as text. Throws with its complaint when it ends with an error. */
export type Oracle = (args: readonly string[]) => string;

const known = new Map<OracleName, Oracle | null>();

/** The oracle, or null when it is not here; looked for once a file. Throws under CI=true. */
export function oracle(name: OracleName): Oracle | null {
  const found = known.get(name);
  if (found !== undefined) return found;
  const looked = lookFor(name);
  known.set(name, looked);
  return looked;
}

function lookFor(name: OracleName): Oracle | null {
  const probe = spawnSync(name, [name === 'qpdf' ? '--version' : '-v'], { encoding: 'utf8' });
  if (probe.error) {
    if (process.env.CI === 'true') throw new Error(`oracle missing: ${name}`);
    console.warn(`oracle missing, its checks are left out: ${name}`);
    return null;
  }
  return (args) => {
    const run = spawnSync(name, args, { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
    if (run.status !== 0) throw new Error(`${name} ${args.join(' ')}: ${run.stderr}${run.stdout}`);
    return run.stdout;
  };
}
