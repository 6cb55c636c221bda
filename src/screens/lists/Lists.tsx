/**
 * People, places and gear, looked up by supervisor or office. Each line opens to be put right; nothing is deleted, what stood there is
 * struck through with its reason. Afterwards the list shows what the book says.
 */
import { useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { deviceZone, now } from '#store/device.ts';
import { type Registers, useRegisters } from '#store/hooks.ts';
import { en as words } from '#words/lists.ts';
import { EditEntry } from './EditEntry.tsx';
import styles from './lists.module.css';
import { entries, type RegisterKind } from './registers.ts';
import { UnnamedPeople } from './UnnamedPeople.tsx';

export interface Editing {
  readonly kind: RegisterKind;
  /** null: a new entry. */
  readonly id: string | null;
  /** A new entry of somebody whom samples name already: the id stands in them, and what a sheet printed. */
  readonly known?: { readonly id: string; readonly name: string; readonly identifier: string | null };
}

const isRegister = (kind: string): kind is RegisterKind => Object.hasOwn(entries, kind);

/** What another page asked for: `?add=pump`, or `?correct=pump.` with the id of one. */
function askedFor(search: string): Editing | null {
  const asked = new URLSearchParams(search);
  const add = asked.get('add') ?? '';
  if (isRegister(add)) return { kind: add, id: null };
  const [kind = '', id = ''] = (asked.get('correct') ?? '').split('.');
  return isRegister(kind) && id !== '' ? { kind, id } : null;
}

/** Pumps, flow meters and lots have pages of their own; whoever came from there goes back there. */
const isGear = (kind: RegisterKind): boolean => kind === 'pump' || kind === 'meter' || kind === 'lot';

export function Lists() {
  const registers = useRegisters();
  const [, go] = useLocation();
  const search = useSearch();
  const [asked] = useState(() => askedFor(search));
  const [editing, setEditing] = useState<Editing | null>(asked);
  if (registers === undefined) return <Page heading={words.heading} />;
  if (editing !== null)
    return (
      <EditEntry
        key={`${editing.kind} ${editing.id ?? editing.known?.id}`}
        editing={editing}
        registers={registers}
        onDone={() => {
          setEditing(null);
          if (editing === asked) go(isGear(editing.kind) ? gearPath(editing) : '/lists');
        }}
        aside={<Register kind={editing.kind} registers={registers} onEdit={setEditing} />}
      />
    );
  const column = (kinds: readonly RegisterKind[]) => (
    <div className={styles.registers}>
      {kinds.map((kind) => (
        <Register key={kind} kind={kind} registers={registers} onEdit={setEditing} />
      ))}
    </div>
  );
  return (
    <Page
      heading={words.heading}
      aside={
        <>
          <Lines>
            <Line to="/gear">{words.gear}</Line>
          </Lines>
          {column(['pump', 'meter', 'lot'])}
        </>
      }
    >
      <p>{words.intro}</p>
      <UnnamedPeople onEdit={setEditing} />
      {column(['person', 'jobClassification', 'site', 'laboratory'])}
    </Page>
  );
}

const gearPath = ({ kind, id }: Editing): string => (id === null ? '/gear' : `/gear/${kind}/${id}`);

interface RegisterProps {
  readonly kind: RegisterKind;
  readonly registers: Registers;
  readonly onEdit: (editing: Editing) => void;
}

function Register({ kind, registers, onEdit }: RegisterProps) {
  const entry = entries[kind];
  const { heading, add, none } = words.registers[kind];
  const today = dayOf(now(), deviceZone());
  return (
    <div className={styles.register}>
      <Lines heading={heading} whenEmpty={none}>
        {inOrder(entry.list(registers), entry.title).map((row) => (
          <Line key={row.id} detail={entry.detail(row, today)} onClick={() => onEdit({ kind, id: row.id })}>
            {entry.title(row)}
          </Line>
        ))}
      </Lines>
      <QuietAction onClick={() => onEdit({ kind, id: null })}>{add}</QuietAction>
    </div>
  );
}

const inOrder = <T,>(rows: readonly T[], title: (row: T) => string): readonly T[] =>
  [...rows].sort((a, b) => title(a).localeCompare(title(b), 'en', { numeric: true }));
