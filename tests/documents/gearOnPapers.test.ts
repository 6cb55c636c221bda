/**
 * A paper made while gear is in doubt says so itself: notice, determination, exposure record, custody sheet; in its pages and in the bytes,
 * read back by pdftotext. Expected sentences are typed here by hand. The day: 24 µg at 2.0 L/min over 480 min, 25 µg/m³.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { custodyPages } from '#documents/custodyPages.ts';
import { custodyPdf } from '#documents/custodyPdf.ts';
import { determinationPages } from '#documents/determinationPages.ts';
import { makeDeterminationPdf } from '#documents/determinationPdf.ts';
import { determinationValues } from '#documents/determinationValues.ts';
import { exposureRecordPages } from '#documents/exposureRecordPages.ts';
import { makeExposureRecordPdf } from '#documents/exposureRecordPdf.ts';
import { exposureRecordValues } from '#documents/exposureRecordValues.ts';
import { noticePages } from '#documents/noticePages.ts';
import { makeNoticePdf } from '#documents/noticePdf.ts';
import { noticeValues } from '#documents/noticeValues.ts';
import { doubtsOnMeasurements, doubtsOnPaper, doubtsOnSheet } from '#findings/gear/doubtsOnPaper.ts';
import type { Book, GearDoubt, PumpRecord } from '#records/book.ts';
import { doubt, settled } from '../findings/gear/gearFacts.ts';
import { base, boxId, lot, lotId, meter, workdayId } from '../findings/sliceRegisters.ts';
import { blank, box, check, result, sample, slice, workday } from '../findings/slices.ts';
import { oracle } from '../house/oracles.ts';
import { exposureInput } from './exposureDays.ts';
import { determinationInput, measurementOf, noticeInput } from './papers.ts';
import { expectInsideMargins, measure, rowsOf, textOf } from './readPages.ts';
import { fonts, sheetWith } from './sheets.ts';

const out = 'tests/out/papers/gear';
mkdirSync(out, { recursive: true });

const [meterId, pumpId, sampleId, blankId] = ['m00000000001', 'q00000000001', 'c00000000001', 'c00000000002'];
const pump: PumpRecord = { ...base('pump', pumpId), pumpId, serial: 'SP-4', model: null };

function day(...doubts: readonly GearDoubt[]): Book {
  const of = (gear: GearDoubt['gear']) => doubts.filter((one) => one.gear === gear);
  const made = slice({
    samples: [sample('07:00', '15:00', [result(24)]), blank(blankId, [])],
    checks: [check('f00000000001', 'before', '06:40', 2), check('f00000000002', 'after', '15:10', 2)],
    day: workday([['07:00', '15:00']]),
    meter: meter({ doubts: of('meter') }),
    lots: [lot({ doubts: of('lot') })],
    box: box([sampleId, blankId]),
  });
  return { ...made, pumps: new Map([[pumpId, { ...pump, doubts: of('pump') }]]) };
}
const measured = measurementOf({ id: workdayId });
const open = doubt('meter', meterId, { found: 'Reads 8 % high against the soap film.' });
const stays = {
  ...doubt('pump', pumpId, { doubtId: 'd00000000002', foundOn: '2027-01-11', found: 'lost its flow' }),
  settled: settled('staysDoubtful', null, { why: 'it cannot be tested any more' }),
};
const torn = doubt('lot', lotId, { doubtId: 'd00000000003', foundOn: '2027-01-12', found: 'filters were torn' });
const onMeasured = (...doubts: readonly GearDoubt[]) => doubtsOnMeasurements([measured], day(...doubts));

const readers = {
  notice: (...doubts: readonly GearDoubt[]) =>
    noticePages(noticeValues(noticeInput({ gearDoubts: onMeasured(...doubts) })), 'letter', measure),
  determination: (...doubts: readonly GearDoubt[]) =>
    determinationPages(determinationValues(determinationInput({ gearDoubts: onMeasured(...doubts) })), 'a4', measure),
  exposureRecord: (...doubts: readonly GearDoubt[]) => {
    const gearDoubts = doubtsOnPaper({ kind: 'exposureRecord', id: workdayId }, day(...doubts));
    return exposureRecordPages(exposureRecordValues(exposureInput({ gearDoubts })), 'letter', measure);
  },
  custody: (...doubts: readonly GearDoubt[]) =>
    custodyPages(sheetWith(3), 'letter', measure, doubtsOnSheet(boxId, day(...doubts))),
};
const papers = Object.entries(readers);

describe.each(papers)('%s', (name, pages) => {
  test('sound gear, gear shown to have had no effect and gear corrected as found: nothing is added', () => {
    const sound = textOf(pages());
    expect(sound).not.toMatch(/found bad|in doubt|en duda/);
    expect(textOf(pages({ ...open, settled: settled('noEffect') }))).toBe(sound);
    expect(textOf(pages({ ...open, settled: settled('asFound', 0.92) }))).toBe(sound);
    // of days that this one is not among
    expect(textOf(pages({ ...open, fromOn: '2026-12-01' }))).toBe(sound);
  });

  test('open or staying doubtful: it says which gear, when it was found, and how it stands; nothing leaves the page', () => {
    const model = pages(open, stays, torn);
    const text = textOf(model);
    for (const part of [/[Ff]low meter P-1/, /[Pp]ump SP-4/, /[Ll]ot L-7/, /10 January 2027/, /11 January 2027/])
      expect(text).toMatch(part);
    expect(text).toMatch(name === 'notice' ? /stays in doubt/ : /stays doubtful/);
    expectInsideMargins(model);
  });

  test('a decision that has no reason settles nothing', () => {
    const unsaid = { ...open, settled: settled('noEffect', null, { why: ' ' }) };
    expect(textOf(pages(unsaid))).toBe(textOf(pages(open)));
  });
});

describe('what each one says', () => {
  test('the notice, in plain words, under the figure, in both languages', () => {
    const text = textOf(readers.notice(open));
    for (const part of [
      'The measuring gear is in doubt',
      'Flow meter P-1 was used for this measurement, and was found bad on 10 January 2027. What that means for this result is not settled yet.',
      'So a low figure here does not show that there was little lead in the air. A high figure counts as it stands. If the result changes once this is settled, a new notice follows.',
      'El equipo de medición está en duda',
      'El medidor de flujo P-1 se usó para esta medición, y el 10 de enero de 2027 se encontró que estaba mal. Todavía no está decidido qué quiere decir eso para este resultado.',
      'Por eso, una cifra baja en este papel no demuestra que había poco plomo en el aire. Una cifra alta vale tal como está. Si el resultado cambia cuando esto se decida, habrá un aviso nuevo.',
    ])
      expect(text).toContain(part);
    const settledText = textOf(readers.notice(stays));
    expect(settledText).toContain('could not be settled: it stays in doubt.');
    expect(settledText).toContain('queda en duda.');
    expect(settledText).not.toMatch(/once this is settled|cuando esto se decida/);
    expect(textOf(readers.notice(torn), 'es-US')).toContain('El lote L-7 de los casetes se usó');
  });

  test('record and determination, with what was found and why it stays so', () => {
    for (const text of [textOf(readers.determination(open, stays)), textOf(readers.exposureRecord(open, stays))])
      for (const part of [
        'Gear that was found bad',
        'Rests on flow meter P-1, found bad on 10 January 2027: Reads 8 % high against the soap film. When this paper was made, nobody had decided yet what follows.',
        'Rests on pump SP-4, found bad on 11 January 2027: lost its flow. It was settled that it stays doubtful, because it cannot be tested any more.',
        'What rests on it proves nothing low. What is high counts as it stands.',
      ])
        expect(text).toContain(part);
  });

  test('the custody sheet names the cassettes: a pump of one, a lot of all, blanks too', () => {
    const text = textOf(readers.custody(stays, torn));
    expect(text).toContain('Cassette 120019 rests on it, with the flows and volumes printed here.');
    expect(text).toMatch(/Lot L-7 was found bad on 12 January 2027: filters were torn; not settled yet\./);
    expect(text).toMatch(/Cassettes 120019 and \d+ rest on it\./);
    const [doubted] = doubtsOnSheet(boxId, day(stays));
    const numbers = ['410010', '410012'];
    const model = custodyPages(
      sheetWith(3),
      'letter',
      measure,
      doubted ? [{ ...doubted, sampleNumbers: numbers }] : [],
    );
    const beside = rowsOf(model, 'cassettes').map((row) => row.at(-1));
    expect(beside).toEqual(['gear in doubt, see notes', 'none', 'gear in doubt, see notes']);
  });

  test('a measurement that a higher one of the same day judges rests on the gear of that one', () => {
    const reported = measurementOf({ id: 'r00000000001', judgedById: workdayId });
    expect(doubtsOnMeasurements([reported], day(open)).map(({ gearNumber }) => gearNumber)).toEqual(['P-1']);
  });
});

const pdftotext = oracle('pdftotext');
test.skipIf(pdftotext === null)(
  'other programs read it in the bytes; the sheet keeps its own data (pdftotext)',
  async () => {
    const gearDoubts = onMeasured(open);
    const sheet = sheetWith(3);
    const before = structuredClone(sheet);
    const made = {
      notice: (await makeNoticePdf(noticeInput({ gearDoubts }))).bytes,
      determination: (await makeDeterminationPdf(determinationInput({ gearDoubts }))).bytes,
      exposureRecord: (await makeExposureRecordPdf(exposureInput({ gearDoubts }))).bytes,
      custody: await custodyPdf(sheet, { paper: 'letter', fonts, gearDoubts: doubtsOnSheet(boxId, day(open)) }),
    };
    expect(sheet).toEqual(before);
    for (const [name, bytes] of Object.entries(made)) {
      writeFileSync(`${out}/${name}.pdf`, bytes);
      const text = pdftotext?.(['-layout', `${out}/${name}.pdf`, '-']).replace(/\s+/g, ' ') ?? '';
      expect(text).toMatch(/[Ff]low meter P-1[^.]* found bad on 10 January 2027/);
      if (name === 'notice') expect(text).toContain('El medidor de flujo P-1 se usó para esta medición');
    }
  },
);
