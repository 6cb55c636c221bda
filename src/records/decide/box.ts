/** The box for the laboratory: each sample in one box, each revision of its sheet the next one, with a reason from the second on. */
import { keyOf } from '../common.ts';
import { type Ask, needsWhy } from './ask.ts';

function packed(ask: Ask<'boxPacked.v1'>): void {
  const { boxId, sampleIds } = ask.fact.body;
  if (ask.view.box(boxId)) ask.refuse('alreadyInBook', ['body/boxId'], { key: keyOf('box', boxId) });
  for (const [at, id] of sampleIds.entries()) {
    const fields = [`body/sampleIds/${at}`];
    const sample = ask.view.sample(id);
    if (!sample) {
      ask.refuse('recordUnknown', fields, { key: keyOf('sample', id) });
      continue;
    }
    const params = { sampleNumber: sample.sampleNumber };
    if (sampleIds.indexOf(id) !== at) ask.refuse('sampleTwiceInBox', fields, params);
    if (ask.view.boxes().some((box) => box.id !== boxId && box.packed.sampleIds.includes(id)))
      ask.refuse('sampleInOtherBox', fields, params);
    if (sample.putOn && !sample.stopped && !sample.voided) ask.refuse('stillRunning', fields, params);
    else if (!sample.sealed) ask.caution('notSealed', fields, params);
    if (sample.voided) ask.caution('voidInBox', fields, params);
  }
}

function knownBox(ask: Ask<'custodySheetIssued.v1'> | Ask<'boxHandedOver.v1'> | Ask<'boxArrived.v1'>) {
  const { boxId } = ask.fact.body;
  const box = ask.view.box(boxId);
  if (!box) ask.refuse('recordUnknown', ['body/boxId'], { key: keyOf('box', boxId) });
  return box;
}

function sheetIssued(ask: Ask<'custodySheetIssued.v1'>): void {
  const box = knownBox(ask);
  if (!box) return;
  const next = Math.max(0, ...box.issues.map(({ revision }) => Number(revision))) + 1;
  const { revision } = ask.fact.body;
  // Written down again from its PDF where the phone was lost: revisions before it may be lost with it.
  const fits = ask.fact.happened.entry === 'typed' ? Number(revision) >= next : revision === String(next);
  if (!fits) ask.refuse('sheetRevisionNotNext', ['body/revision'], { revision, next: String(next) });
  if (next > 1) needsWhy(ask as Ask);
}

function handedOver(ask: Ask<'boxHandedOver.v1'>): void {
  const box = knownBox(ask);
  if (box?.handedOver) ask.refuse('alreadyHandedOver', ['body/boxId'], { to: box.handedOver.to });
}

export const boxCases = {
  'boxPacked.v1': packed,
  'custodySheetIssued.v1': sheetIssued,
  'boxHandedOver.v1': handedOver,
  'boxArrived.v1': (ask: Ask<'boxArrived.v1'>) => void knownBox(ask),
};
