/** Examples of lists, notices, actions, and what is asked before an act. */
import { useState } from 'react';
import { ConfirmBox } from '../ConfirmBox.tsx';
import { ErrorSummary } from '../ErrorSummary.tsx';
import { Line, Lines, Particulars } from '../Lines.tsx';
import { MainAction } from '../MainAction.tsx';
import { Notice } from '../Notice.tsx';
import { ProgressLine } from '../ProgressLine.tsx';
import { QuietAction } from '../QuietAction.tsx';
import { Saved } from '../Saved.tsx';
import { StandingMark } from '../StandingMark.tsx';
import type { Example } from './example.ts';

function Asked() {
  const [open, setOpen] = useState(false);
  const [answer, setAnswer] = useState('');
  return (
    <>
      <QuietAction onClick={() => setOpen(true)}>Void this sample</QuietAction>
      <p>{answer}</p>
      <ConfirmBox
        open={open}
        heading="Void sample 10473?"
        reasonLabel="Why is it void?"
        confirmText="Void it"
        onConfirm={(reason) => {
          setAnswer(reason);
          setOpen(false);
        }}
        onCancel={() => setOpen(false)}
      >
        <p>It stays in the book, struck through, with your reason.</p>
      </ConfirmBox>
    </>
  );
}

export const examples: readonly Example[] = [
  {
    part: 'Lines',
    name: 'sentences that lead somewhere',
    render: () => (
      <Lines heading="On the workers">
        <Line to="/gallery" detail="Put on 07:12, looked at 09:05" end="226 L">
          Ilse Moreau, sash removal
        </Line>
        <Line to="/gallery" detail="Put on 07:20, next look at 09:20" end="211 L">
          Teo Lindqvist, dry scraping
        </Line>
      </Lines>
    ),
  },
  {
    part: 'Lines',
    name: 'with standings',
    render: () => (
      <Lines>
        <Line detail="Library windows, 24 November 2026" end={<StandingMark standing="doubtful" />}>
          10473, with the laboratory since Tuesday
        </Line>
        <Line detail="Library windows, 24 November 2026" end={<StandingMark standing="good" />}>
          10474, sealed, not sent
        </Line>
      </Lines>
    ),
  },
  { part: 'Lines', name: 'empty', render: () => <Lines whenEmpty="No sample has been taken yet.">{[]}</Lines> },
  {
    part: 'Particulars',
    name: 'default',
    render: () => (
      <Particulars
        items={[
          ['Pump', 'Serial 4017'],
          ['Flow before', '2.05 L/min'],
          ['Media lot', '88-120'],
        ]}
      />
    ),
  },
  { part: 'Notice', name: 'quiet', render: () => <Notice>The meter is due for its certificate in 12 days.</Notice> },
  {
    part: 'Notice',
    name: 'alert',
    render: () => (
      <Notice kind="alert">The flow changed by 12 %. No average is made of it until someone decides why.</Notice>
    ),
  },
  {
    part: 'ProgressLine',
    name: 'half way',
    render: () => <ProgressLine text="The file is being made" done={50} total={100} />,
  },
  { part: 'Saved', name: 'saved', render: () => <Saved state="saved" at="07:12" /> },
  { part: 'Saved', name: 'not saved', render: () => <Saved state="notSaved" /> },
  { part: 'MainAction', name: 'default', render: () => <MainAction>Put on now</MainAction> },
  { part: 'MainAction', name: 'while writing down', render: () => <MainAction busy>Put on now</MainAction> },
  { part: 'QuietAction', name: 'default', render: () => <QuietAction>At another time</QuietAction> },
  { part: 'ConfirmBox', name: 'with a reason', render: () => <Asked /> },
  {
    part: 'ErrorSummary',
    name: 'two fields and one of no field',
    render: () => (
      <ErrorSummary
        errors={[
          { field: 'work-area', text: 'Say where the work was' },
          { field: 'flow', text: 'Flow: write a number in L/min, without words' },
          { field: null, text: 'This pump is on another worker' },
        ]}
      />
    ),
  },
];
