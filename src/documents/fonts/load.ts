/** Fetches the papers' typeface from the app's own files, which the service worker keeps for when there is no signal. */
import type { FontBytes } from '../pdf/open.ts';
import regularUrl from './DejaVuSans.ttf?url';
import boldUrl from './DejaVuSans-Bold.ttf?url';

async function bytesAt(url: string): Promise<Uint8Array> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`typeface not found: ${response.status}`);
  return new Uint8Array(await response.arrayBuffer());
}

/** Throws when a typeface is neither cached nor reachable. */
export async function loadFonts(): Promise<FontBytes> {
  const [regular, bold] = await Promise.all([bytesAt(regularUrl), bytesAt(boldUrl)]);
  return { regular, bold };
}
