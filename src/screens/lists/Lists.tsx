/**
 * People, places and gear, looked up by supervisor or office. Each line opens to be put right; nothing is deleted, what stood there is
 * struck through with its reason. Afterwards the list shows what the book says.
 */
import { useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { deviceZone, now } from '#store/device.ts';
import { type Registers, useRegisters } from '#store/hooks.ts';
import { en as words } from '#words/lists.ts';
import { EditEntry } from './EditEntry.tsx';
import styles from './lists.module.css';
import { entries, type RegisterKind, registerKinds } from './registers.ts';

export interface Editing {
  readonly kind: RegisterKind;
  /** null: a new entry. */
  readonly id: string | null;
}

export function Lists() {
  const registers = useRegisters();
  const [editing, setEditing] = useState<Editing | null>(null);
  if (registers === undefined) return <Page heading={words.heading} />;
  if (editing !== null)
    return (
      <EditEntry
        key={`${editing.kind} ${editing.id}`}
        editing={editing}
        registers={registers}
        onDone={() => setEditing(null)}
        aside={<Register kind={editing.kind} registers={registers} onEdit={setEditing} />}
      />
    );
  return (
    <Page heading={words.heading}>
      <p>{words.intro}</p>
      <div className={styles.registers}>
        {registerKinds.map((kind) => (
          <Register key={kind} kind={kind} registers={registers} onEdit={setEditing} />
        ))}
      </div>
    </Page>
  );
}

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
        {entry.list(registers).map((row) => (
          <Line key={row.id} detail={entry.detail(row, today)} onClick={() => onEdit({ kind, id: row.id })}>
            {entry.title(row)}
          </Line>
        ))}
      </Lines>
      <QuietAction onClick={() => onEdit({ kind, id: null })}>{add}</QuietAction>
    </div>
  );
}
