/** Two versions of the built app, served one after the other from the same address: what an update looks like to a browser. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { headersFor } from '#app/responseHeaders.ts';

const typeOf: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.txt': 'text/plain',
  '.ttf': 'font/ttf',
};

export interface TwoVersions {
  readonly address: string;
  /** From now on the second version is served. */
  readonly change: () => void;
  readonly stop: () => Promise<void>;
}

/** The second version differs in its page, and its worker knows that. */
export async function serveTwoVersions(port: number): Promise<TwoVersions> {
  const folder = mkdtempSync(join(tmpdir(), 'fullshift-versions-'));
  const first = join(folder, 'first');
  const second = join(folder, 'second');
  cpSync('dist', first, { recursive: true });
  cpSync('dist', second, { recursive: true });
  const page = join(second, 'index.html');
  writeFileSync(page, readFileSync(page, 'utf8').replace('<html', '<html data-edition="second"'));
  const worker = join(second, 'sw.js');
  const text = readFileSync(worker, 'utf8');
  const changed = text.replace(/"revision":"[^"]+"(?=,"url":"index\.html")/, '"revision":"second"');
  if (changed === text) throw new Error('the worker does not list index.html as expected');
  writeFileSync(worker, changed);

  let root = first;
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    const file = normalize(join(root, path.endsWith('/') ? `${path}index.html` : path));
    try {
      const body = readFileSync(file);
      response.writeHead(200, {
        ...headersFor(path),
        'Content-Type': typeOf[extname(file)] ?? 'application/octet-stream',
      });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(port, 'localhost', resolve));
  return {
    address: `http://localhost:${port}/`,
    change: () => {
      root = second;
    },
    stop: async () => {
      server.closeAllConnections();
      await new Promise<void>((resolve) => server.close(() => resolve()));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
