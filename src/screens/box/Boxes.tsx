/** Every box there ever was, newest first, and what still waits to be packed. */
import { dayOf } from '#core/calendar.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { BoxRecord } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { type Registers, useAwaitingResults, useBoxes, useRegisters } from '#store/hooks.ts';
import { en } from '#words/box.ts';
import { formatDay } from '#words/quantity.ts';
import { freeSamples } from './freeSamples.ts';
import { whenOf } from './when.ts';

const words = en.boxes;

export function Boxes() {
  const boxes = useBoxes();
  const awaiting = useAwaitingResults();
  const registers = useRegisters();
  if (boxes === undefined || awaiting === undefined || registers === undefined) return <Page heading={words.heading} />;
  const waitingCount = freeSamples(awaiting, boxes).stopped.length;
  const action =
    waitingCount === 0 ? (
      <MainAction to="/">{words.toToday}</MainAction>
    ) : (
      <MainAction to="/pack">{words.pack}</MainAction>
    );
  return (
    <Page heading={words.heading} over={words.waiting(waitingCount)} action={action}>
      {boxes.length === 0 ? (
        <p>{words.empty}</p>
      ) : (
        <Lines heading={words.list}>
          {boxes.map((box) => (
            <BoxLine key={box.id} box={box} registers={registers} />
          ))}
        </Lines>
      )}
    </Page>
  );
}

function BoxLine({ box, registers }: { readonly box: BoxRecord; readonly registers: Registers }) {
  const site = registers.sites.byId.get(box.packed.siteId);
  const zone = site?.zone ?? deviceZone();
  const laboratory = registers.laboratories.byId.get(box.packed.laboratoryId)?.name ?? '';
  const standing = standingOf(box, zone);
  return (
    <Line
      to={`/box/${box.id}`}
      detail={
        <>
          <StandingMark standing={standing.mark}>{standing.text}</StandingMark>
          <br />
          {words.detail(site?.name ?? '', formatDay(dayOf(box.packedAt, zone)))}
        </>
      }
    >
      {words.line(box.packed.sampleIds.length, laboratory)}
    </Line>
  );
}

function standingOf({ issues, handedOver, arrivedAt }: BoxRecord, zone: string) {
  const { standing } = words;
  if (arrivedAt !== null) return { mark: 'done', text: standing.arrived(whenOf(arrivedAt, zone)) } as const;
  if (handedOver !== null)
    return { mark: 'waiting', text: standing.away(handedOver.to, whenOf(handedOver.at, zone)) } as const;
  return { mark: 'due', text: issues.length === 0 ? standing.noSheet : standing.sheet } as const;
}
