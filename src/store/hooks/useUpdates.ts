/** What is known of newer versions of the app, live. */
import { useSyncExternalStore } from 'react';
import { currentUpdates, onUpdates, type Updates } from '../appUpdates.ts';

export const useUpdates = (): Updates => useSyncExternalStore(onUpdates, currentUpdates);
