/** Start-up: policy first, then the book, then the first page; the worker that keeps the app on the device comes last. */
import '#parts/tokens.css';
import '#parts/base.css';
import { createRoot } from 'react-dom/client';
import { watchErrors } from '#store/lastErrors.ts';
import { openBooks } from '#store/opening.ts';
import { receivedFiles } from '#store/received.ts';
import { writingHalf } from '#store/write.ts';
import { App } from './App.tsx';
import { takeUpLaunches } from './launched.ts';
import { preloadFirstPage } from './screens.ts';
import { keepOnDevice } from './updates.ts';

watchErrors();
void openBooks();
preloadFirstPage();
const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no root');
createRoot(root).render(<App />);
keepOnDevice();
takeUpLaunches();
// What writes is fetched while the first page is being read, not while it is still being made. A failure here is told at the first write.
const firstPageStandsMs = 1500;
const afterFirstPage = () =>
  setTimeout(() => {
    void writingHalf().catch(() => undefined);
    // What came in from outside and was never looked into goes after a day.
    void receivedFiles().catch(() => undefined);
  }, firstPageStandsMs);
window.addEventListener('load', afterFirstPage, { once: true });
