/** Every kind of fact, and every value in it, is said in words: never as it lies in the file. */
import { describe, expect, test } from 'vitest';
import { type Fact, type FactKind, factBodies, type NewFact } from '#records/fact.ts';
import { tellFacts } from '#screens/story/tellFacts.ts';
import { bookOf } from '#store/slices.ts';
import { labelOf } from '#words/fieldNames.ts';
import { en as sentences, type Telling } from '#words/storyFacts.ts';
import { valueText } from '#words/valueText.ts';
import { journal, wanted } from '../records/facts.ts';
import { everyBody } from './everyFact.ts';

const kinds = Object.keys(factBodies) as FactKind[];
const say: Telling = { nameOf: () => undefined, zone: 'America/New_York', saidBy: () => undefined };
const raw = /[{}[\]"]|undefined|null|NaN|\d{4}-\d\d-\d\dT|\b(?=[a-z0-9]*\d{3})[a-z0-9]{12}\b/;

/** Every place in a body, with its value. */
function places(value: unknown, path: string): readonly (readonly [path: string, value: unknown])[] {
  const inside = typeof value === 'object' && value !== null ? Object.entries(value) : [];
  return [[path, value] as const, ...inside.flatMap(([key, inner]) => places(inner, `${path}/${key}`))];
}

describe.each(kinds)('%s', (kind) => {
  const body = factBodies[kind].parse(everyBody[kind]);

  test('has a sentence', () => {
    const fact = { ...wanted(kind, body as never, { about: ['sample:c00000000001'] }), id: 'wwwwwwwwwwww.00000001' };
    const sentence = (sentences[kind] as (fact: Fact, say: Telling) => string)(fact as unknown as Fact, say);
    expect(sentence.length).toBeGreaterThan(3);
    expect(sentence).not.toMatch(raw);
  });

  test('each value in it has a name and is said', () => {
    const shown = places(body, '').filter(([path]) => path !== '' && !/(hash|Hash|heads|editions|FactId)/.test(path));
    const named = (key: string): boolean => !/^(\/(sheet|knew|replaces|chosen|over|path|writer))/.test(key);
    for (const [path, value] of shown.filter(([path]) => named(path))) {
      expect(labelOf(path), path).not.toMatch(/[{}[\]/]|undefined/);
      if (/(Id|\/\d+)$/.test(path) && typeof value === 'string' && !/pieces|readings/.test(path)) continue;
      expect(valueText(path, value, say), path).not.toMatch(/[{}[\]"]|undefined|NaN|\d{4}-\d\d-\d\dT/);
    }
  });
});

test('one fact of every kind, one of a newer version and one that cannot be read make that many sentences', () => {
  const about = ['sample:c00000000001'];
  const facts = kinds.map((kind) => wanted(kind, everyBody[kind] as never, { about }) as NewFact);
  const stored = [
    ...journal(facts).map(({ id, text }) => ({ id, text })),
    {
      id: 'yyyyyyyyyyyy.00000001',
      text: journal(facts.slice(0, 1), 'yyyyyyyyyyyy')[0]?.text.replace('bookOpened.v1', 'bookClosed.v2') ?? '',
    },
    { id: 'yyyyyyyyyyyy.00000002', text: '{"cut' },
  ];
  const told = tellFacts(stored, { book: bookOf([]), devices: { here: '', names: new Map() }, zone: say.zone });
  expect(told).toHaveLength(kinds.length + 2);
  expect(new Set(told.map(({ factId }) => factId)).size).toBe(kinds.length + 2);
});

test('points, hours, readings, pairs and other work are said as a person says them', () => {
  expect(valueText('/points', everyBody['fittingChecked.v1'].points, say)).toBe('not so: Tubing secured');
  expect(valueText('/pieces', everyBody['workHoursStated.v1'].pieces, say)).toBe('07:00 to 11:30, for Another firm');
  expect(valueText('/readings', everyBody['flowChecked.v1'].readings, say)).toBe('2.50\u00a0L/min to 2.60\u00a0L/min');
  expect(valueText('/mass', everyBody['resultReceived.v1'].mass, say)).toBe('less than 2.50\u00a0µg');
  expect(valueText('/otherWork', ['no', 'yes', 'no'], say)).toMatch(/^A call-out: no; Work at a second site: yes/);
  expect(labelOf('/readings/1/highLPerMin')).toBe('Reading 2, highest');
  expect(labelOf('/pieces/0/endedAt')).toBe('Piece of work 1: ended');
});
