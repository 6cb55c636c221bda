/** Whether this device can read codes from its camera, and the reader itself: the browser's own, so nothing is fetched or sent. */

interface DetectedCode {
  readonly rawValue: string;
}
export interface CodeDetector {
  detect(source: HTMLVideoElement): Promise<readonly DetectedCode[]>;
}
interface CodeDetectorMaker {
  new (options: { readonly formats: readonly string[] }): CodeDetector;
  getSupportedFormats(): Promise<readonly string[]>;
}

const format = 'qr_code';
const maker = (): CodeDetectorMaker | undefined =>
  (globalThis as { readonly BarcodeDetector?: CodeDetectorMaker }).BarcodeDetector;

/** Older browsers and pages that are not served securely have no `mediaDevices`, whatever the type says. */
const cameras = (): MediaDevices | undefined => navigator.mediaDevices as MediaDevices | undefined;

/** False too where it cannot be told. */
export async function canReadCodes(): Promise<boolean> {
  const detector = maker();
  if (detector === undefined || typeof cameras()?.getUserMedia !== 'function') return false;
  try {
    return (await detector.getSupportedFormats()).includes(format);
  } catch {
    return false;
  }
}

/** Null where there is none. */
export function codeDetector(): CodeDetector | null {
  const detector = maker();
  return detector === undefined ? null : new detector({ formats: [format] });
}

export type CameraTrouble = 'refused' | 'none' | 'busy' | 'stopped';

/** The camera at the back, where there is one. Rejects with the browser's own error. */
export async function openCamera(): Promise<MediaStream> {
  const found = cameras();
  if (found === undefined) throw new DOMException('no camera', 'NotFoundError');
  return found.getUserMedia({ video: { facingMode: 'environment' }, audio: false });
}

export function troubleOf(error: unknown): CameraTrouble {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  return name === 'NotFoundError' || name === 'OverconstrainedError' ? 'none' : 'busy';
}
