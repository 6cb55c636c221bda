/** Runs one task in the sealing worker, whose address alone the Trusted Types policy lets through. */
import type { OpenTask, SealTask, Told } from './ageFile.ts';
import type { SealMessage } from './sealingWorker.ts';
import sealingWorkerUrl from './sealingWorker.ts?worker&url';

interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL: (url: string) => string },
  ): { createScriptURL(url: string): unknown };
}

let trusted: string | null = null;

/** `Worker` is handed what the policy made of the address; a policy can be made only once. */
function trustedWorkerUrl(): string {
  if (trusted !== null) return trusted;
  const url = new URL(sealingWorkerUrl, document.baseURI).href;
  const trustedTypes = (globalThis as { readonly trustedTypes?: TrustedTypes }).trustedTypes;
  const policy = trustedTypes?.createPolicy('app-sealing', {
    createScriptURL: (wanted) => {
      if (wanted !== url) throw new TypeError('Only the worker that seals may be started');
      return wanted;
    },
  });
  trusted = (policy?.createScriptURL(url) ?? url) as string;
  return trusted;
}

const errorOf = ({ name, message }: Extract<SealMessage, { kind: 'failed' }>): Error =>
  name === 'RangeError' ? new RangeError(message) : new Error(`${name}: ${message}`);

/** Rejects when the worker cannot be started or breaks, with a RangeError when memory is short, and with the signal's reason when stopped. */
export function inSealingWorker(task: SealTask | OpenTask, told: Told, signal?: AbortSignal): Promise<SealMessage> {
  const worker = new Worker(trustedWorkerUrl(), { type: 'module' });
  const ended = new Promise<SealMessage>((resolve, reject) => {
    const stop = (): void => reject(signal?.reason);
    signal?.addEventListener('abort', stop, { once: true });
    worker.onerror = (event) => reject(new Error(event.message || 'The worker that seals did not start'));
    worker.onmessageerror = () => reject(new Error('The worker that seals could not be understood'));
    worker.onmessage = ({ data }: MessageEvent<SealMessage>) => {
      if (data.kind === 'failed') reject(errorOf(data));
      else if (data.kind !== 'progress') resolve(data);
      else if (!signal?.aborted) told(data.done, data.total);
    };
    worker.postMessage(task);
  });
  return ended.finally(() => worker.terminate());
}
