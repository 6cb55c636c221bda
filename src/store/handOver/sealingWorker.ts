/** Sealing and opening away from the page: deriving the key alone takes seconds on a phone. One task, then the page ends it. */
import { type Opened, type OpenTask, openNow, type SealTask, sealNow } from './ageFile.ts';

export type SealMessage =
  | { readonly kind: 'progress'; readonly done: number; readonly total: number }
  | { readonly kind: 'sealed'; readonly blob: Blob }
  | { readonly kind: 'failed'; readonly name: string; readonly message: string }
  | Opened;

const page = self as unknown as { postMessage(message: SealMessage): void; onmessage: unknown };

const tellEveryBytes = 1 << 20;

async function answer(task: SealTask | OpenTask): Promise<SealMessage> {
  let toldAt = 0;
  const told = (done: number, total: number): void => {
    if (done - toldAt < tellEveryBytes && done < total) return;
    toldAt = done;
    page.postMessage({ kind: 'progress', done, total });
  };
  try {
    return task.do === 'open' ? await openNow(task, told) : { kind: 'sealed', blob: await sealNow(task, told) };
  } catch (error) {
    const { name, message } = error instanceof Error ? error : { name: 'Error', message: String(error) };
    return { kind: 'failed', name, message };
  }
}

page.onmessage = ({ data }: MessageEvent<SealTask | OpenTask>): void => {
  void answer(data).then((message) => page.postMessage(message));
};
