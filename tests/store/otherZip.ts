/** Archives read by others: fflate's reader of whole archives, and where they are installed Info-ZIP's unzip and Python's zipfile. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';

export const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());

const listing = `
import hashlib, json, sys, zipfile
archive = zipfile.ZipFile(sys.argv[1])
assert archive.testzip() is None
print(json.dumps({e.filename: hashlib.sha256(archive.read(e)).hexdigest() for e in archive.infolist()}))
`;

export interface ReadByOthers {
  readonly entries: ReadonlyMap<string, Uint8Array>;
  /** Name -> SHA-256 as Python reads it; null where it is not installed. */
  readonly byPython: Readonly<Record<string, string>> | null;
  /** Whether Info-ZIP finds every entry whole; null where it is not installed. */
  readonly byUnzip: boolean | null;
}

export async function readByOthers(blob: Blob): Promise<ReadByOthers> {
  const bytes = await bytesOf(blob);
  const folder = mkdtempSync(join(tmpdir(), 'zip-'));
  const path = join(folder, 'archive.zip');
  writeFileSync(path, bytes);
  try {
    const python = spawnSync('python3', ['-c', listing, path], { encoding: 'utf8' });
    const unzip = spawnSync('unzip', ['-t', path], { encoding: 'utf8' });
    const missing = (run: { error?: Error | undefined }): boolean =>
      (run.error as { code?: string } | undefined)?.code === 'ENOENT';
    if (!missing(python) && python.status !== 0) throw new Error(python.stderr);
    return {
      entries: new Map(Object.entries(unzipSync(bytes))),
      byPython: missing(python) ? null : JSON.parse(python.stdout),
      byUnzip: missing(unzip) ? null : unzip.status === 0,
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
