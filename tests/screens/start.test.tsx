// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { databaseNames } from '#store/database.ts';
import { holder } from '#store/holder.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { bookState } from '#store/session.ts';
import { newDevice, pickUp } from '#tests/store/device.ts';
import { makeBackup } from '../store/handOvers.ts';
import {
  address,
  alerts,
  button,
  emptyOffice,
  facts,
  heading,
  leaveOffice,
  type Office,
  practiceOffice,
  samples,
  screen,
  visit,
  waitFor,
} from './office.tsx';

let office: Office;
beforeEach(async () => {
  office = await emptyOffice();
});
afterEach(leaveOffice);

const choose = async (user: ReturnType<typeof visit>, name: string | RegExp) =>
  user.click(await screen.findByRole('radio', { name }));
const pickFile = async (user: ReturnType<typeof visit>, file: File) =>
  user.upload(await screen.findByLabelText('File of the book'), file);

describe('the first page of a device', () => {
  test('asks for the name of the firm and nothing else, then who holds the device', async () => {
    await openBooks();
    const user = visit('/start');
    await heading('Begin a book');
    expect(screen.getAllByRole('textbox')).toHaveLength(1);
    await user.type(screen.getByRole('textbox', { name: 'Name of the firm' }), 'Old Sash & Steel');
    await user.click(await button('Open the new book'));
    await heading('Who holds this device?');
    await user.type(await screen.findByRole('textbox', { name: 'Name' }), 'Greta Gimlet');
    await user.click(await button('Go on'));
    await waitFor(() => expect(address()).toBe('/'));
    const [opened] = await facts('bookOpened.v1');
    expect(opened?.body).toMatchObject({ firmName: 'Old Sash & Steel', practice: false });
    const [added] = await facts('personAdded.v1');
    expect(added?.body).toMatchObject({ name: 'Greta Gimlet', language: 'en' });
    expect((await holder())?.personId).toBe(added?.body.personId);
  });

  test('offers restore beside the new book, shows what the file holds, and takes it in', async () => {
    await practiceOffice();
    const { blob, name, factsCount } = await makeBackup();
    await pickUp(newDevice());
    await openBooks();
    const user = visit('/start');
    await choose(user, /^Take up a book/);
    await pickFile(user, new File([blob], name));
    await user.click(await button('Look into the file'));
    expect(await screen.findByText('Sill and Sash Restoration (EXAMPLE)')).toBeVisible();
    expect(screen.getAllByText(`${factsCount} entries`)).toHaveLength(2);
    expect(bookState().kind).not.toBe('open');
    await user.click(await button('Take this book in'));
    await heading('Who holds this device?');
    expect(await samples()).toHaveLength(6);
  });

  test('says first when the browser has emptied the book, and puts the backup in front', async () => {
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    await closeBook();
    const gone = office.device.indexedDB.deleteDatabase(databaseNames.book);
    await new Promise((done) => gone.addEventListener('success', done));
    await openBooks();
    visit('/start');
    await heading('The book on this device is gone');
    expect(alerts()).toContain('has emptied it');
    expect(screen.getByRole('radio', { name: /^Take up a book/ })).toBeChecked();
    expect(await button('Look into the file')).toBeVisible();
  });

  test('opens the practice book: a season, two workers yesterday, one running today, EXAMPLE in its record', async () => {
    await openBooks();
    const user = visit('/start');
    await choose(user, 'A practice book');
    await user.click(await button('Open the practice book'));
    await screen.findByRole('heading', { level: 1, name: /Tallow Street Library/ }, { timeout: 20_000 });
    const all = await samples();
    expect(all.filter(({ sampleKind }) => sampleKind === 'blank')).toHaveLength(2);
    expect(all.filter(({ follows }) => follows !== null)).toHaveLength(1);
    // nineteen cassettes of the season, three and two blanks of yesterday
    expect(all.filter(({ results }) => results.length > 0)).toHaveLength(24);
    expect(all.filter(({ putOn, stopped }) => putOn !== null && stopped === null)).toHaveLength(1);
    expect((await facts('bookOpened.v1'))[0]?.body.practice).toBe(true);
  });
});

describe('who holds this device', () => {
  test('a number that looks like a social security number is not kept', async () => {
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const user = visit('/who');
    await user.type(await screen.findByRole('textbox', { name: 'Name' }), 'Otto Oakum');
    await user.type(screen.getByRole('textbox', { name: /Identifier/ }), '078-05-1120');
    await user.click(await button('Go on'));
    await waitFor(() => expect(alerts()).toContain('looks like a social security number'));
    expect(await facts('personAdded.v1')).toEqual([]);
    expect(screen.getByRole('textbox', { name: 'Name' })).toHaveValue('Otto Oakum');
  });

  test('somebody from the book takes the device over with one choice', async () => {
    await practiceOffice();
    const user = visit('/who');
    await user.click(await screen.findByRole('radio', { name: 'Pia Putty' }));
    await user.click(await button('Go on as Pia Putty'));
    await waitFor(() => expect(address()).toBe('/'));
    const people = await facts('personAdded.v1');
    const pia = people.find(({ body }) => body.name === 'Pia Putty');
    expect((await holder())?.personId).toBe(pia?.body.personId);
  });
});
