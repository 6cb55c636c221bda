/** A custody sheet that says other than the record: a new revision is made on the page of the box, or it is left so with a reason. */
import type { SheetMatter } from '#findings/openMatters.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/settle.ts';
import { differenceSentences } from '#words/sheetDifferences.ts';
import { lineOf } from './lineOf.ts';
import { SettleForm } from './SettleForm.tsx';
import type { Settling } from './settling.ts';

const words = en.sheetDiffers;
const blank = { why: '' };

export function SheetForm({ settling }: { readonly settling: Settling<SheetMatter> }) {
  const { matter, book } = settling;
  const { boxId, revision, recordHash, differences } = matter;
  const box = book.boxes.get(boxId);
  const issued = box?.issues.findLast((issue) => issue.revision === revision);
  const sentences = box && issued ? differenceSentences(differences, issued.sheet, box, book) : [];
  return (
    <SettleForm
      settling={settling}
      heading={words.heading(revision)}
      action={words.action}
      meanwhile={lineOf(matter, settling).meanwhile}
      blank={blank}
      build={(_, _read, entry) => [newFact('sheetDifferenceKept.v1', { boxId, revision, recordHash }, entry)]}
    >
      {() => (
        <>
          <Lines heading={words.differences}>
            {sentences.map((sentence) => (
              <Line key={sentence}>{sentence}</Line>
            ))}
          </Lines>
          <div>
            <QuietAction to={`/box/${boxId}`}>{words.raise}</QuietAction>
          </div>
          <h2>{words.orKeep}</h2>
          <p>{words.keepHint}</p>
        </>
      )}
    </SettleForm>
  );
}
