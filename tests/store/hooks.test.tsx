// @vitest-environment happy-dom
import { act, cleanup, renderHook, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { flushDrafts } from '#store/drafts.ts';
import { setHolder } from '#store/holder.ts';
import {
  useAwaitingResults,
  useBookMeta,
  useBookState,
  useBoxBook,
  useDraft,
  useNow,
  useRegisters,
  useRunSheet,
  useSampleBook,
  useSampleList,
  useShiftBook,
  useShifts,
  useWorkdayBook,
} from '#store/hooks.ts';
import { closeBook, newBook } from '#store/opening.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let clock: TestClock;
let day: Library;
beforeEach(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  await write(openingFacts(day));
});
afterEach(async () => {
  cleanup();
  await closeBook();
});

const written = (facts: Parameters<typeof write>[0]) =>
  act(async () => {
    expect(await write(facts)).toMatchObject({ kind: 'written' });
  });

describe('hooks', () => {
  test('answer undefined while loading, then the rows, then what a write changed', async () => {
    const one = sampleOf(day);
    const { result } = renderHook(() => ({ sheet: useRunSheet('2026-11-25'), book: useSampleBook(one.sampleId) }));
    expect(result.current).toEqual({ sheet: undefined, book: undefined });
    await waitFor(() => expect(result.current.sheet?.shift?.id).toBe(day.shiftId));
    expect(result.current.book).toBeNull();
    await written([one.prepared(entry())]);
    clock.forward(60_000);
    await written([one.putOn(entry())]);
    await waitFor(() => expect(result.current.book?.samples.get(one.sampleId)?.putOn).not.toBeNull());
    await waitFor(() => expect(result.current.sheet?.unfinished).toHaveLength(1));
  });

  test('registers, shifts, lists, and null for what does not exist', async () => {
    const one = sampleOf(day);
    await written([one.prepared(entry())]);
    const { result } = renderHook(() => ({
      registers: useRegisters(),
      shifts: useShifts(5),
      list: useSampleList({ limit: 10 }),
      awaiting: useAwaitingResults(),
      shift: useShiftBook(day.shiftId),
      noBox: useBoxBook('000000000000'),
      workday: useWorkdayBook(`${day.personId}.2026-11-25`),
      noWorkday: useWorkdayBook('000000000000.2026-11-25'),
    }));
    // Each question answers in its own time.
    await waitFor(() => expect(Object.values(result.current)).not.toContain(undefined));
    const { registers, shifts, list, awaiting, shift, noBox, workday } = result.current;
    expect(registers?.pumps.list.map(({ serial }) => serial)).toEqual(['P-1']);
    expect(registers?.people.byId.get(day.personId)?.name).toBe('Ada Quill');
    expect(shifts?.map(({ id }) => id)).toEqual([day.shiftId]);
    expect(list).toMatchObject({ total: 1, older: null });
    expect(awaiting).toHaveLength(1);
    expect(shift?.sites.size).toBe(1);
    expect(workday?.samples.size).toBe(1);
    expect(noBox).toBeNull();
  });

  test('who holds the device, and how the book stands, in step with what happens', async () => {
    const { result } = renderHook(() => ({ state: useBookState(), meta: useBookMeta() }));
    await waitFor(() => expect(result.current.meta?.book?.firmName).toBe('Old Sash & Steel'));
    expect(result.current.meta).toMatchObject({ practice: false, holderPersonId: null, lastBackupAt: null });
    await act(() => setHolder(day.personId));
    await waitFor(() => expect(result.current.meta?.holderPersonId).toBe(day.personId));
    expect(result.current.meta?.holderAskedAt).toBe('2026-11-25T11:00:00.000Z');
    await act(closeBook);
    expect(result.current.state).toEqual({ kind: 'opening' });
    await waitFor(() => expect(result.current.meta).toBeUndefined());
  });

  test('now is renewed when the page comes back into view', async () => {
    const { result } = renderHook(() => useNow(60_000));
    expect(result.current).toBe('2026-11-25T11:00:00.000Z');
    clock.forward(90_000);
    act(() => void document.dispatchEvent(new Event('visibilitychange')));
    expect(result.current).toBe('2026-11-25T11:01:30.000Z');
  });
});

describe('useDraft', () => {
  test('keeps what is typed, over a page that is left and shown again', async () => {
    const first = renderHook(() => useDraft('sample:x/stop', { minutes: '' }));
    await waitFor(() => expect(first.result.current.loaded).toBe(true));
    act(() => first.result.current.set({ minutes: '41' }));
    expect(first.result.current).toMatchObject({ value: { minutes: '41' }, kept: false });
    await waitFor(() => expect(first.result.current.kept).toBe(true));
    act(() => first.result.current.set({ minutes: '412' }));
    first.unmount();
    await flushDrafts();
    const again = renderHook(() => useDraft('sample:x/stop', { minutes: '' }));
    await waitFor(() => expect(again.result.current.value).toEqual({ minutes: '412' }));
  });

  test('never lets an earlier draft overwrite what was typed before it was found', async () => {
    const before = renderHook(() => useDraft('sample:x/stop', ''));
    act(() => before.result.current.set('earlier'));
    before.unmount();
    await flushDrafts();
    const { result } = renderHook(() => useDraft('sample:x/stop', ''));
    act(() => result.current.set('now'));
    await waitFor(() => expect(result.current.kept).toBe(true));
    expect(result.current.value).toBe('now');
  });

  test('cleared is gone, also from the disk', async () => {
    const { result, unmount } = renderHook(() => useDraft('sample:x/stop', 'blank'));
    act(() => result.current.set('typed'));
    await waitFor(() => expect(result.current.kept).toBe(true));
    act(() => result.current.clear());
    expect(result.current.value).toBe('blank');
    unmount();
    await flushDrafts();
    const again = renderHook(() => useDraft('sample:x/stop', 'blank'));
    await waitFor(() => expect(again.result.current.loaded).toBe(true));
    expect(again.result.current.value).toBe('blank');
  });
});
