/** Start-up: policy first, then the book, then the first page; the worker that keeps the app on the device comes last. */
import './jitless.ts';
import '#parts/tokens.css';
import '#parts/base.css';
import { createRoot } from 'react-dom/client';
import { openBooks } from '#store/opening.ts';
import { App } from './App.tsx';
import { keepOnDevice } from './updates.ts';

void openBooks();
const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no root');
createRoot(root).render(<App />);
keepOnDevice();
