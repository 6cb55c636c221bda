/** Entries of another device that did not come: wait for a file that has them, or accept them as lost, with a reason. */
import type { MissingMatter } from '#findings/openMatters.ts';
import { QuietAction } from '#parts/QuietAction.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/settle.ts';
import { lineOf, missingCount } from './lineOf.ts';
import { SettleForm } from './SettleForm.tsx';
import { deviceText, type Settling } from './settling.ts';

const words = en.missingEntries;
const blank = { why: '' };

export function MissingForm({ settling }: { readonly settling: Settling<MissingMatter> }) {
  const { matter, book, devices } = settling;
  const { writer, fromCount, toCount, untilOn } = matter.missing;
  const bookId = book.book?.bookId ?? '';
  return (
    <SettleForm
      settling={settling}
      heading={words.heading}
      action={words.action}
      meanwhile={lineOf(matter, settling).meanwhile}
      blank={blank}
      build={(_, _read, entry) => [newFact('missingEntriesAccepted.v1', { bookId, writer, fromCount, toCount }, entry)]}
    >
      {() => (
        <>
          <p>{words.which(deviceText(writer, devices), missingCount(matter.missing), untilOn)}</p>
          <p>{words.wait}</p>
          <div>
            <QuietAction to="/take-in">{words.toTakeIn}</QuietAction>
          </div>
          <h2>{words.orLost}</h2>
          <p>{words.lostHint}</p>
        </>
      )}
    </SettleForm>
  );
}
