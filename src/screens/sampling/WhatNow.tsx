/** What else can happen to a pump or its cassette, one line each; the tap on a line is its moment. */
import { useLocation } from 'wouter';
import { Line, Lines } from '#parts/Lines.tsx';
import { now } from '#store/device.ts';
import { en as words } from '#words/sampling.ts';
import type { SampleStanding } from './standing.ts';
import type { Sampling } from './useSampling.ts';

type LineKey = keyof typeof words.lines;
const detailByKey = words.lines as Readonly<Record<string, string>>;

/** In the order in which a day brings them. */
const linesByStanding: Readonly<Record<SampleStanding, readonly LineKey[]>> = {
  prepared: ['remark', 'void'],
  worn: ['off', 'away', 'change', 'look', 'fault', 'mishap', 'earlier', 'remark', 'void'],
  away: ['off', 'look', 'fault', 'mishap', 'earlier', 'remark', 'void'],
  off: ['mishap', 'fault', 'earlier', 'remark', 'void'],
  fault: ['off', 'change', 'mishap', 'earlier', 'remark', 'void'],
  notSure: ['off', 'look', 'fault', 'change', 'mishap', 'earlier', 'remark', 'void'],
  stopped: ['mishap', 'remark', 'mistake', 'void'],
  void: ['remark'],
  blank: ['mishap', 'remark', 'void'],
};
const canStop: readonly SampleStanding[] = ['worn', 'away', 'off', 'fault', 'notSure'];
const deedOf: Partial<Readonly<Record<LineKey, string>>> = { earlier: 'stop' };

export interface WhatNowProps {
  readonly sampling: Sampling;
  readonly standing: SampleStanding;
  readonly onStop: () => void;
}

export function WhatNow({ sampling, standing, onStop }: WhatNowProps) {
  const { sample } = sampling;
  const [, go] = useLocation();
  const isShown = (key: LineKey): boolean => !(key === 'mistake' && sample.sealed !== null);
  return (
    <Lines heading={words.whatNow}>
      {canStop.includes(standing) && (
        <Line onClick={onStop} detail={words.lines.stopDetail}>
          {words.lines.stop}
        </Line>
      )}
      {linesByStanding[standing].filter(isShown).map((key) => (
        <Line
          key={key}
          onClick={() => go(`/sample/${sample.id}?do=${deedOf[key] ?? key}&at=${now()}`)}
          detail={detailByKey[`${key}Detail`]}
        >
          {words.lines[key]}
        </Line>
      ))}
    </Lines>
  );
}
