import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { waitUntilKept } from './appPages.ts';
import { beginBook, checkFlowsBefore, fitInEnglish, fitInSpanish, openShift, prepare } from './fieldSteps.ts';
import { heading, type Notebook, newShelf, openNotebook, says, tap } from './notebookSteps.ts';
import { startPreview } from './preview.ts';
import { dropProfile } from './realBrowser.ts';

test('records a full shift of two workers without a signal, and the office finishes it', async () => {
  const server = await startPreview(4621);
  const shelf = newShelf(server.address, '2026-10-06', join('tests', 'out', 'shift'));
  const notebook: Notebook = await openNotebook(shelf, '06:10');
  try {
    await notebook.page.goto(server.address);
    await waitUntilKept(notebook.page);
    await beginBook(notebook);
    await openShift(notebook);
    await notebook.at('06:20');
    await checkFlowsBefore(notebook, ['2.5', '2.6'], ['2.4', '2.5']);
    await notebook.at('06:35');
    await tap(notebook, 'Prepare a worker');
    const inesNumber = await prepare(notebook, {
      name: 'Ines Farrow',
      reads: 'English',
      task: 'Scraping paint by hand',
      pump: 'P-11',
    });
    await tap(notebook, 'Hand the phone to Ines Farrow');
    await fitInEnglish(notebook, 'IF');
    await heading(notebook, 'Put the pump on Ines Farrow');
    await notebook.picture('put-on');
    console.log(inesNumber);
  } finally {
    await notebook.kill();
    await server.stop();
    dropProfile(shelf.profile);
  }
});
