/**
 * Hands a file out of the app. Build the file first, then call this inside the tap: a share sheet opens only within seconds of a tap.
 * A home-screen app on iOS cannot download (the user is stranded in a viewer), so it shares or says that it cannot.
 */

/** What happened, as far as the device tells. `downloaded`: handed to the browser, which says no more. */
export type Delivery =
  | { readonly kind: 'shared' | 'saved' | 'downloaded' }
  | { readonly kind: 'cancelled' }
  /** The tap was too long ago: offer a new button, the file is still here. */
  | { readonly kind: 'tapAgain' }
  | { readonly kind: 'failed'; readonly why: 'cannotShareHere' | 'unknown' };

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

async function share(file: File): Promise<Delivery> {
  try {
    await navigator.share({ files: [file] });
    return { kind: 'shared' };
  } catch (error) {
    return outcomeOf(error);
  }
}

async function saveByPicker(picker: NonNullable<SavePicker['showSaveFilePicker']>, file: File): Promise<Delivery> {
  try {
    const handle = await picker({ suggestedName: file.name });
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

const canShare = (file: File): boolean =>
  typeof navigator.share === 'function' && navigator.canShare?.({ files: [file] }) === true;

/** iOS shares PDF, CSV, TXT and pictures, no archives: the same bytes then go out under a name that it lets through. */
const asText = (file: File): File => new File([file], `${file.name}.txt`, { type: 'text/plain' });

/** Share sheet on a phone, save picker or download elsewhere; says which it was. */
export async function deliver(blob: Blob, name: string): Promise<Delivery> {
  const file = new File([blob], name, { type: blob.type || 'application/octet-stream' });
  if (prefersSharing()) {
    if (canShare(file)) return share(file);
    if (isStandaloneIos()) {
      const renamed = asText(file);
      return canShare(renamed) ? share(renamed) : { kind: 'failed', why: 'cannotShareHere' };
    }
  }
  const picker = (window as SavePicker).showSaveFilePicker;
  return picker === undefined ? download(file) : saveByPicker(picker.bind(window), file);
}
