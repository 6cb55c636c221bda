/** The built app on a port of its own, served as `npm start` serves it, and stoppable in the middle of a journey. */
import { type ChildProcess, spawn } from 'node:child_process';

export interface Preview {
  readonly address: string;
  readonly stop: () => Promise<void>;
}

/** Another build than the one in `dist`, beside which it can be tried out. */
const builtElsewhere = process.env.BUILT_IN;

export async function startPreview(port: number, base?: string): Promise<Preview> {
  const args = [
    'node_modules/vite/bin/vite.js',
    'preview',
    '--port',
    String(port),
    '--strictPort',
    ...(base ? ['--base', base] : []),
    ...(builtElsewhere ? ['--outDir', builtElsewhere] : []),
  ];
  const child: ChildProcess = spawn(process.execPath, args, { stdio: 'ignore' });
  const address = `http://localhost:${port}${base ?? '/'}`;
  const stop = async (): Promise<void> => {
    const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
    if (child.exitCode !== null || child.signalCode !== null) return;
    child.kill('SIGKILL');
    await gone;
  };
  for (let attempt = 0; attempt < 150; attempt += 1) {
    // A port that another server holds would answer too, and live on after `stop`.
    if (child.exitCode !== null) throw new Error(`the preview server did not start at ${address}`);
    const answer = await fetch(address).catch(() => null);
    if (answer?.ok) return { address, stop };
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  await stop();
  throw new Error(`nothing answered at ${address} within 15 s`);
}
