/** A folder in memory that answers like the browser's handle of one (File System Access): permissions, locks, files half written. */
import type { DirectoryHandle, FileHandle } from '#store/handOver/folderHandle.ts';

const refused = (name: string) => new DOMException('as the browser says it', name);

export interface Held {
  bytes: string;
  lastModified: number;
  locked?: boolean;
}

export class FolderStandIn implements DirectoryHandle {
  readonly kind = 'directory';
  readonly name = 'Shared by the firm';
  readonly files = new Map<string, Held>();
  permission: PermissionState = 'granted';
  /** A browser stores its own handles; this one cannot be stored at all, rather than come back without what it can do. */
  readonly notStored = (): void => undefined;
  /** What the person answers when asked. */
  answer: PermissionState = 'granted';
  gone = false;
  /** The disk is full after so many bytes. */
  roomBytes = Number.POSITIVE_INFINITY;
  looks = 0;
  /** By the folder's own clock. */
  now = 0;

  put(name: string, bytes: string, lastModified = this.now): void {
    this.files.set(name, { bytes, lastModified });
  }

  async queryPermission(): Promise<PermissionState> {
    return this.permission;
  }

  async requestPermission(): Promise<PermissionState> {
    if (this.permission === 'prompt') this.permission = this.answer;
    return this.permission;
  }

  private open(): void {
    if (this.permission !== 'granted') throw refused('NotAllowedError');
    if (this.gone) throw refused('NotFoundError');
  }

  async *keys(): AsyncIterableIterator<string> {
    this.looks += 1;
    this.open();
    yield* [...this.files.keys()];
  }

  async getFileHandle(name: string, options?: { create: boolean }): Promise<FileHandle> {
    this.open();
    if (!this.files.has(name)) {
      if (options?.create !== true) throw refused('NotFoundError');
      this.put(name, '');
    }
    return {
      kind: 'file',
      name,
      getFile: async () => this.fileOf(name),
      createWritable: async () => this.writableOf(name),
    };
  }

  private fileOf(name: string): File {
    this.open();
    const held = this.files.get(name);
    if (held === undefined) throw refused('NotFoundError');
    if (held.locked === true) throw refused('NotReadableError');
    return new File([held.bytes], name, { lastModified: held.lastModified });
  }

  private writableOf(name: string) {
    if (this.files.get(name)?.locked === true) throw refused('NoModificationAllowedError');
    let written = '';
    return {
      write: async (data: Blob): Promise<void> => {
        written += await data.text();
        this.open();
        if (written.length > this.roomBytes) throw refused('QuotaExceededError');
      },
      close: async (): Promise<void> => {
        this.open();
        this.put(name, written);
      },
      abort: async (): Promise<void> => undefined,
    };
  }

  async removeEntry(name: string): Promise<void> {
    this.open();
    this.files.delete(name);
  }
}
