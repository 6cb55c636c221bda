/**
 * Every sample there ever was, for supervisor, office or whoever asks at the door: newest first, none hidden, in sentences. Afterwards
 * the one that was looked for is open.
 */
import { useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { type CheckedCode, ReadCode } from '#parts/ReadCode.tsx';
import { TextField } from '#parts/TextField.tsx';
import { checkSampleNumber } from '#records/sampleNumber.ts';
import { deviceZone, now } from '#store/device.ts';
import { useSamplesNumbered } from '#store/hooks/useSamplesNumbered.ts';
import { useBoxes, useRegisters, useSampleList } from '#store/hooks.ts';
import { en as words } from '#words/samples.ts';
import { SampleLine } from './SampleLine.tsx';
import styles from './samples.module.css';

const pageLength = 50;

function checkCode(text: string): CheckedCode {
  const checked = checkSampleNumber(text);
  if (checked.kind === 'right') return { kind: 'right', number: checked.sampleNumber };
  return { kind: 'wrong', why: words.mistakes[checked.mistake] };
}

export function Samples() {
  const [limit, setLimit] = useState(pageLength);
  const list = useSampleList({ limit });
  const registers = useRegisters();
  const boxes = useBoxes();
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState<string | null>(null);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const found = useSamplesNumbered(asked);
  if (list === undefined || registers === undefined || boxes === undefined) return <Page heading={words.heading} />;

  const find = () => {
    const checked = checkSampleNumber(typed);
    setAsked(checked.kind === 'right' ? checked.sampleNumber : null);
    setErrors(checked.kind === 'right' ? [] : [{ field: 'number', text: words.mistakes[checked.mistake] }]);
  };
  const findRead = (number: string) => {
    setTyped(number);
    setAsked(number);
    setErrors([]);
  };
  const zone = deviceZone();
  const shared = { registers, today: dayOf(now(), zone), zone };
  const boxBySample = new Map(boxes.flatMap((box) => box.packed.sampleIds.map((id) => [id, box] as const)));
  const notFound = asked !== null && found !== undefined && found.length === 0;
  const shownErrors = notFound ? [{ field: 'number', text: words.notFound(asked) }] : errors;
  if (list.total === 0)
    return (
      <Page heading={words.heading} action={<MainAction to="/">{words.toToday}</MainAction>}>
        <p>{words.empty}</p>
      </Page>
    );
  return (
    <Page heading={words.heading} over={words.total(list.total)}>
      <ErrorSummary errors={shownErrors} />
      <form
        noValidate
        className={styles.find}
        onSubmit={(event) => {
          event.preventDefault();
          find();
        }}
      >
        <TextField
          name="number"
          label={words.find}
          hint={words.findHint}
          kind="digits"
          value={typed}
          onChange={setTyped}
          error={errorOf(shownErrors, 'number')}
        />
        <QuietAction type="submit">{words.findAction}</QuietAction>
      </form>
      <ReadCode check={checkCode} onRead={findRead} />
      {found !== undefined && found.length > 0 && (
        <Lines heading={words.found}>
          {found.map((sample) => (
            <SampleLine key={sample.id} sample={sample} box={boxBySample.get(sample.id)} {...shared} />
          ))}
        </Lines>
      )}
      <Lines heading={words.newestFirst}>
        {list.samples.map((sample) => (
          <SampleLine key={sample.id} sample={sample} box={boxBySample.get(sample.id)} {...shared} />
        ))}
      </Lines>
      {list.older !== null && (
        <div>
          <QuietAction onClick={() => setLimit(limit + pageLength)}>{words.older}</QuietAction>
        </div>
      )}
    </Page>
  );
}
