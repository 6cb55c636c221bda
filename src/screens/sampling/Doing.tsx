/** Which deed the address asks for; an unknown one is the page of the sample. */
import type { ComponentType } from 'react';
import { Away } from './Away.tsx';
import { ChangeCassette } from './ChangeCassette.tsx';
import { Correct } from './Correct.tsx';
import { Fault } from './Fault.tsx';
import { LookWrong } from './LookWrong.tsx';
import { Mishap } from './Mishap.tsx';
import { Off } from './Off.tsx';
import { SamplePage } from './SamplePage.tsx';
import { Settle } from './Settle.tsx';
import { TypedDeed, type TypedDeedKey, typedDeeds } from './TypedDeed.tsx';
import type { Sampling } from './useSampling.ts';
import { DecideFlow, Mistake, Remark, Voiding } from './WithReason.tsx';

const deeds: Readonly<Record<string, ComponentType<{ readonly sampling: Sampling }>>> = {
  away: Away,
  off: Off,
  change: ChangeCassette,
  fault: Fault,
  mishap: Mishap,
  look: LookWrong,
  remark: Remark,
  void: Voiding,
  mistake: Mistake,
  decide: DecideFlow,
  correct: Correct,
  settle: Settle,
};

const isTyped = (deed: string): deed is TypedDeedKey => (typedDeeds as readonly string[]).includes(deed);

export function Doing({ sampling, deed }: { readonly sampling: Sampling; readonly deed: string }) {
  if (isTyped(deed)) return <TypedDeed sampling={sampling} deed={deed} />;
  const Form = deeds[deed] ?? SamplePage;
  return <Form sampling={sampling} />;
}
