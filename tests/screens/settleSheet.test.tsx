// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test } from 'vitest';
import { custodySheetFor } from '#findings/custody.ts';
import type { Book } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { boxBook } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { facts, leaveOffice, practiceOffice } from './office.tsx';
import { alerts, button, heading, put, screen, visit } from './stage.tsx';

beforeEach(async () => {
  await practiceOffice();
});
afterEach(leaveOffice);

const entry = () => ({ happened: happenedNow('UTC'), by: null });
const editions = { app: '1', rules: '2', formulas: '3' };

/** A sheet of the practice box as it stands, and then a remark for the laboratory that the sheet does not hold. */
async function differing(remark: string): Promise<string> {
  const packed = (await facts('boxPacked.v1'))[0]?.body as FactBody<'boxPacked.v1'>;
  const { boxId } = packed;
  const { db } = theSession();
  const row = (await db.journal.toArray()).find(({ text }) => text.includes('"kind":"boxPacked.v1"'));
  if ((await facts('custodySheetIssued.v1')).length === 0) {
    const book = (await boxBook(db, boxId)) as Book;
    const made = custodySheetFor(boxId, book, { issuedInstant: happenedNow('UTC').at, why: null, heads: [], editions });
    if (made.kind === 'gaps') throw new Error(JSON.stringify(made.gaps));
    const body = {
      boxId,
      revision: '1',
      paper: 'letter',
      sheet: { ...made.sheet },
      pdfHash: 'a'.repeat(64),
      editions,
      heads: [],
    };
    await put([newFact('custodySheetIssued.v1', body as never, entry())]);
  }
  const old = ((await boxBook(db, boxId)) as Book).boxes.get(boxId)?.packed.remark ?? null;
  const body = { replaces: row?.id ?? '', path: '/remark', old, new: remark, supersedes: null };
  await put([newFact('valueCorrected.v1', body, { ...entry(), why: 'By telephone', about: [`box:${boxId}`] })]);
  return boxId;
}

test('a sheet that differs is told in words, leads to the box, or is left with a reason until the record changes again', async () => {
  const boxId = await differing('Keep the filters');
  let user = visit('/settle');
  const line = await screen.findByRole('link', {
    name: /Revision 1 of the custody sheet differs from the record in one place/,
  });
  await user.click(line);
  await heading('Revision 1 differs from the record');
  expect(screen.getByText('Remark: sheet not stated, record Keep the filters')).toBeVisible();
  expect(screen.getByRole('link', { name: 'Go to the box and make a new revision' })).toHaveAttribute(
    'href',
    `#/box/${boxId}`,
  );
  await user.click(await button('Leave the sheet as it is'));
  expect(alerts()).toContain('Say why in a few words');
  await user.type(screen.getByLabelText('Why'), 'They know it');
  await user.click(await button('Leave the sheet as it is'));
  expect(await screen.findByText('Nothing is open. There is nothing to settle.')).toBeVisible();
  expect((await facts('sheetDifferenceKept.v1')).at(-1)).toMatchObject({
    why: 'They know it',
    body: { boxId, revision: '1' },
  });
  await differing('Send the filters back');
  user = visit('/settle');
  expect(await screen.findByRole('link', { name: /Revision 1 of the custody sheet differs/ })).toBeVisible();
});
