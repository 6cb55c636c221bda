/** A line for each label that the camera reads; a number that stands there already is not put in twice. */
import { type CheckedCode, ReadCode } from '#parts/ReadCode.tsx';
import { checkSampleNumber } from '#records/sampleNumber.ts';
import { en as words } from '#words/results.ts';

export interface ReadRowsProps {
  readonly keyed: ReadonlySet<string>;
  readonly onPut: (number: string) => void;
}

export function ReadRows({ keyed, onPut }: ReadRowsProps) {
  const check = (text: string): CheckedCode => {
    const checked = checkSampleNumber(text);
    if (checked.kind === 'wrong') return { kind: 'wrong', why: words.mistakes[checked.mistake] };
    if (keyed.has(checked.sampleNumber)) return { kind: 'wrong', why: words.lineThere(checked.sampleNumber) };
    return { kind: 'right', number: checked.sampleNumber };
  };
  return <ReadCode check={check} onRead={onPut} goesOn />;
}
