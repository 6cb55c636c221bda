/** Is there room for a second column? The same width at which a page takes one. */
import { useSyncExternalStore } from 'react';

const query = '(min-width: 62.5rem)';

function onChange(listener: () => void): () => void {
  const media = window.matchMedia(query);
  media.addEventListener('change', listener);
  return () => media.removeEventListener('change', listener);
}

export const useWide = (): boolean => useSyncExternalStore(onChange, () => window.matchMedia(query).matches);
