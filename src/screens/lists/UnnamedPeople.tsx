/** After a book was rebuilt from a custody sheet that shows identifiers: whose name is still to be added. Nothing when all are named. */
import { Line, Lines } from '#parts/Lines.tsx';
import { useUnnamed } from '#store/hooks/useUnnamed.ts';
import { en as words } from '#words/lists.ts';
import type { Editing } from './Lists.tsx';

export function UnnamedPeople({ onEdit }: { readonly onEdit: (editing: Editing) => void }) {
  const people = useUnnamed();
  if (people.length === 0) return null;
  return (
    <Lines heading={words.unnamed.heading}>
      {people.map(({ personId, identifier, sampleNumber, printedName }) => (
        <Line
          key={personId}
          detail={words.unnamed.detail(sampleNumber)}
          onClick={() =>
            onEdit({ kind: 'person', id: null, known: { id: personId, name: printedName ?? '', identifier } })
          }
        >
          {words.unnamed.who(printedName, identifier)}
        </Line>
      ))}
    </Lines>
  );
}
