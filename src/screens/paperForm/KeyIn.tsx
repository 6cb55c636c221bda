/**
 * The office or the supervisor with a filled paper form, at a table, after a shift without the phone: one worker's form keyed in from top
 * to bottom. Afterwards the book holds the same record as if it had been tapped, marked as typed from paper.
 */
import { useState } from 'react';
import { useSearch } from 'wouter';
import { dayOf, isZone } from '#core/calendar.ts';
import { parseDay } from '#parts/parseDay.ts';
import type { MomentPlace } from '#parts/parseMoment.ts';
import type { Book } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { useRosterBook } from '#store/hooks/useRosterBook.ts';
import { type Registers, useBookMeta, useDraft, useNow, useRegisters } from '#store/hooks.ts';
import { en as words } from '#words/keyIn.ts';
import { KeyedIn, type KeyedInForm } from './KeyedIn.tsx';
import { KeyInForm } from './KeyInForm.tsx';
import { emptyKeyIn, type KeyInDraft } from './keyInDraft.ts';
import type { Held } from './readKeyIn.ts';

const minute = 60_000;
const draftKey = 'book/keyIn';

export function KeyIn() {
  const registers = useRegisters();
  const meta = useBookMeta();
  const asked = new URLSearchParams(useSearch()).get('shift') ?? '';
  if (registers === undefined || meta === undefined) return null;
  return <KeyInPage registers={registers} holder={meta.holderName} by={meta.holderPersonId} asked={asked} />;
}

interface KeyInPageProps {
  readonly registers: Registers;
  readonly holder: string | null;
  readonly by: string | null;
  /** The shift from whose page it was opened: site and day stand there already. */
  readonly asked: string;
}

function KeyInPage({ registers, holder, by, asked }: KeyInPageProps) {
  const now = useNow(minute);
  const site = registers.sites.byId.get(asked.slice(0, asked.indexOf('.')));
  const blank = emptyKeyIn(deviceZone(), words.fromPaper(holder), site?.id ?? null, site ? asked.slice(-10) : '');
  const draft = useDraft<KeyInDraft>(draftKey, blank);
  const [keyedIn, setKeyedIn] = useState<KeyedInForm | null>(null);
  const place = placeOf(draft.value, registers, now);
  const parsed = parseDay(draft.value.day, place.today);
  const shiftId = `${draft.value.siteId}.${parsed.kind === 'value' ? parsed.value : ''}`;
  const book = useRosterBook(shiftId) ?? null;
  const held = heldBy(draft.value, shiftId, book, registers);
  if (keyedIn !== null) return <KeyedIn form={keyedIn} onNext={() => setKeyedIn(null)} />;
  return <KeyInForm draft={draft} registers={registers} place={place} held={held} by={by} onSaved={setKeyedIn} />;
}

/** The zone of the site that is picked or being written down; until then that of the device. */
function placeOf({ siteId, site }: KeyInDraft, registers: Registers, now: string): MomentPlace {
  const zone = registers.sites.byId.get(siteId ?? '')?.zone ?? (isZone(site.zone) ? site.zone : deviceZone());
  return { zone, now, today: dayOf(now, zone) };
}

function heldBy(draft: KeyInDraft, shiftId: string, book: Book | null, registers: Registers) {
  const workday = book?.workdays.get(`${draft.workerId}.${shiftId.slice(-10)}`);
  const held: Held & { readonly shift: boolean } = {
    shift: book?.shifts.has(shiftId) ?? false,
    conditions: (book?.shifts.get(shiftId)?.conditions ?? null) !== null,
    regular: (workday?.regular ?? null) !== null,
    roster: workday?.worked?.some((each) => each.shiftId === shiftId) ?? false,
    meterKind: registers.meters.byId.get(draft.meterId ?? '')?.meterKind ?? null,
  };
  return held;
}
