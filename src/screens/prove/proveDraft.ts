/** What is typed on the page, what a plan's figures prefill, and what is read from it. */
import type { SampleAheadInput } from '#findings/season/sampleAhead.ts';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { limitSetOn } from '#reference/limits.ts';
import { methodById } from '#reference/methods.ts';
import { en as partsWords } from '#words/parts.ts';
import { en } from '#words/proveScreen.ts';

const words = en.fields;
export const otherMethod = '-';

export interface ProveText {
  readonly rule: 'federal' | 'california';
  readonly method: string;
  readonly limit: string;
  readonly flow: string;
  readonly shift: string;
  readonly sampled: string;
  readonly cassettes: string;
  readonly share: string;
  readonly dust: string;
  readonly charge: string;
}

/** From a plan: method, limit, flow, cassettes. What is not handed in starts as a usual day. */
export function proveFrom(search: string): ProveText {
  const asked = new URLSearchParams(search);
  const method = asked.get('method') ?? '';
  return {
    rule: asked.get('state') === 'CA' ? 'california' : 'federal',
    method: methodById(method) === undefined ? otherMethod : method,
    limit: asked.get('limit') ?? '',
    flow: asked.get('flow') ?? '2',
    shift: asked.get('shift') ?? '480',
    sampled: asked.get('sampled') ?? '',
    cassettes: asked.get('cassettes') ?? '1',
    share: asked.get('share') ?? '50',
    dust: asked.get('dust') ?? '',
    charge: asked.get('charge') ?? '',
  };
}

/** A count is a whole number of things: 1.5 cassettes are none. */
function count(read: FieldReader, text: string): number | null {
  const found = read.quantity('cassettes', words.cassettes, '', text, { least: 1, most: 12 });
  if (found === null || Number.isInteger(found)) return found;
  return read.add('cassettes', partsWords.quantity.letters({ label: words.cassettes, unit: '' }));
}

export function readProve(text: ProveText, today: string) {
  const read = fieldReader(partsWords);
  const reportingLimitUg = read.quantity('limit', words.limit, 'µg', text.limit, { least: 0.001, most: 1000 });
  const flowLPerMin = read.quantity('flow', words.flow, 'L/min', text.flow, { least: 0.01, most: 20 });
  const shiftMin = read.quantity('shift', words.shift, 'min', text.shift, { least: 1, most: 1440 });
  const wish = { least: 0.001, optional: true };
  const sampledMin = read.quantity('sampled', words.sampled, 'min', text.sampled, { ...wish, least: 1, most: 1440 });
  const cassettesCount = count(read, text.cassettes);
  const sharePct = read.quantity('share', words.share, '%', text.share, { least: 1, most: 100 });
  const dustMgPerM3 = read.quantity('dust', words.dust, 'mg/m³', text.dust, { ...wish, most: 10_000 });
  const chargeHours = read.quantity('charge', words.charge, 'h', text.charge, { ...wish, most: 1000 });
  if (shiftMin !== null && sampledMin !== null && sampledMin > shiftMin) read.add('sampled', words.sampledTooLong);
  return { errors: read.errors, input: inputOf() };

  function inputOf(): SampleAheadInput | null {
    if (read.errors.length > 0 || reportingLimitUg === null || flowLPerMin === null) return null;
    if (shiftMin === null || cassettesCount === null || sharePct === null) return null;
    const { actionLevel, pel } = limitSetOn(today, text.rule === 'california' ? 'CA' : '').set;
    return {
      methodId: text.method === otherMethod ? null : text.method,
      ...{ reportingLimitUg, flowLPerMin, shiftMin, cassettesCount, dustMgPerM3, chargeHours },
      ...(sampledMin === null ? {} : { sampledMin }),
      shareOfActionLevel: shareOf(sharePct),
      actionLevelUgPerM3: actionLevel.value,
      pelUgPerM3: pel.value,
      on: today,
    };
  }
}

const shareOf = (sharePct: number): number => sharePct / 100;
