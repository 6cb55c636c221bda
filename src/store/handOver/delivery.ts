/**
 * Hands a file out of the app. Make the file first and ask which ways there are, then call `deliver` inside the tap: a share sheet opens
 * only within seconds of a tap. A home-screen app on iOS cannot download (the user is stranded in a viewer), so it shares or says that it
 * cannot. By mail or cable goes whatever was saved: nothing is needed for it here.
 */

/** What happened, as far as the device tells. `downloaded`: handed to the browser, which says no more. */
export type Delivery =
  | { readonly kind: 'shared' | 'saved' | 'downloaded' }
  | { readonly kind: 'cancelled' }
  /** The tap was too long ago: offer a new button, the file is still here. */
  | { readonly kind: 'tapAgain' }
  | { readonly kind: 'failed'; readonly why: 'cannotShareHere' | 'unknown' };

/** `shareAsText`: phones that share no archives let the same bytes out under a name that ends in .txt. */
export type WayOut = 'share' | 'shareAsText' | 'saveDialog' | 'download';

interface SavePicker {
  showSaveFilePicker?: (options: { suggestedName: string }) => Promise<{
    createWritable: () => Promise<{ write: (data: Blob) => Promise<void>; close: () => Promise<void> }>;
  }>;
}

const nameOfError = (error: unknown): string =>
  error instanceof Error || error instanceof DOMException ? error.name : '';

const outcomeOf = (error: unknown): Delivery => {
  if (nameOfError(error) === 'AbortError') return { kind: 'cancelled' };
  if (nameOfError(error) === 'NotAllowedError') return { kind: 'tapAgain' };
  return { kind: 'failed', why: 'unknown' };
};

/** A home-screen app on iOS or iPadOS: its own flag, known nowhere else. */
export const isStandaloneIos = (): boolean => (navigator as { standalone?: boolean }).standalone === true;

/** Opened from the home screen or as an installed app. */
export const isInstalled = (): boolean => isStandaloneIos() || matchMedia('(display-mode: standalone)').matches;

/** A phone or tablet: there the share sheet is where files go. */
const prefersSharing = (): boolean => isStandaloneIos() || matchMedia('(pointer: coarse)').matches;

const asFile = (blob: Blob, name: string): File =>
  new File([blob], name, { type: blob.type || 'application/octet-stream' });

/** The same bytes. Looking into a file goes by what is in it, so the name need not be changed back. */
const asText = (blob: Blob, name: string): File => new File([blob], `${name}.txt`, { type: 'text/plain' });

function canShare(file: File): boolean {
  try {
    return typeof navigator.share === 'function' && navigator.canShare?.({ files: [file] }) === true;
  } catch {
    return false;
  }
}

function shareWay(blob: Blob, name: string): readonly WayOut[] {
  if (canShare(asFile(blob, name))) return ['share'];
  return canShare(asText(blob, name)) ? ['shareAsText'] : [];
}

/** What is possible here for this file, the best first; empty: nothing is. Asked of the browser for each file, as it answers by type. */
export function waysOut(blob: Blob, name: string): readonly WayOut[] {
  const sharing = shareWay(blob, name);
  if (isStandaloneIos()) return sharing;
  const picker: readonly WayOut[] = (window as SavePicker).showSaveFilePicker === undefined ? [] : ['saveDialog'];
  const saving: readonly WayOut[] = [...picker, 'download'];
  return prefersSharing() ? [...sharing, ...saving] : [...saving, ...sharing];
}

async function share(file: File): Promise<Delivery> {
  try {
    await navigator.share({ files: [file] });
    return { kind: 'shared' };
  } catch (error) {
    return outcomeOf(error);
  }
}

async function saveByPicker(file: File): Promise<Delivery> {
  const { showSaveFilePicker } = window as SavePicker;
  if (showSaveFilePicker === undefined) return { kind: 'failed', why: 'unknown' };
  try {
    const handle = await showSaveFilePicker.call(window, { suggestedName: file.name });
    const writable = await handle.createWritable();
    await writable.write(file);
    await writable.close();
    return { kind: 'saved' };
  } catch (error) {
    return outcomeOf(error);
  }
}

function download(file: File): Delivery {
  const url = URL.createObjectURL(file);
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = file.name;
  anchor.rel = 'noopener';
  document.body.append(anchor);
  anchor.click();
  anchor.remove();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  return { kind: 'downloaded' };
}

/** By the way asked for, else by the best there is; says which it was. Nothing is awaited before the share sheet or dialog is asked for. */
export async function deliver(blob: Blob, name: string, way?: WayOut): Promise<Delivery> {
  switch (way ?? waysOut(blob, name)[0]) {
    case 'share':
      return share(asFile(blob, name));
    case 'shareAsText':
      return share(asText(blob, name));
    case 'saveDialog':
      return saveByPicker(asFile(blob, name));
    case 'download':
      return download(asFile(blob, name));
    default:
      return { kind: 'failed', why: 'cannotShareHere' };
  }
}
