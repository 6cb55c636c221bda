/**
 * The standard command line of age (Debian package `age`), written by others. It asks for a passphrase on a terminal only, so it runs
 * inside `script` of util-linux, which makes one.
 */
import { spawn, spawnSync } from 'node:child_process';

export interface AgeProgram {
  /** Answers each question with the passphrase. Throws with what the program said when it ends with an error. */
  readonly run: (args: string, passphrase: string) => Promise<void>;
}

const isHere = (name: string, says: RegExp): boolean =>
  says.test(spawnSync(name, ['--version'], { encoding: 'utf8' }).stdout ?? '');

/** null, and said aloud, when it is not on this machine. Throws under CI=true. */
export function ageProgram(): AgeProgram | null {
  const missing = [isHere('age', /\d/) ? '' : 'age', isHere('script', /util-linux/) ? '' : 'script of util-linux'];
  const named = missing.filter(Boolean).join(' and ');
  if (named === '') return { run };
  if (process.env.CI === 'true') throw new Error(`oracle missing: ${named}`);
  console.warn(`oracle missing, its checks are left out: ${named}`);
  return null;
}

function run(args: string, passphrase: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn('script', ['-qec', `age ${args}`, '/dev/null'], { stdio: ['pipe', 'pipe', 'pipe'] });
    let said = '';
    let answered = 0;
    const hear = (bytes: Buffer): void => {
      said += bytes.toString();
      const asked = said.match(/passphrase[^:]*: /gi)?.length ?? 0;
      for (; answered < asked; answered += 1) child.stdin.write(`${passphrase}\n`);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve() : reject(new Error(`age ${args}: ${said}`))));
  });
}
