/** What a paper says of the gear that it rests on, while that is in doubt. The notice is read by workers, so its words are plain. */
import type { DoubtOnPaper, DoubtOnSheet } from '#findings/gear/doubtsOnPaper.ts';
import { gearName, gearTitle } from './gearScreen.ts';
import { formatDay, formatList } from './quantity.ts';

/** A text that somebody wrote, without the full stop that the sentence around it has. */
const written = (text: string): string => text.trim().replace(/[.;]+$/, '');

const standing = { open: 'not settled yet', staysDoubtful: 'settled: it stays doubtful' } as const;

export const en = {
  heading: 'Gear that was found bad',
  line: ({ gear, gearNumber, foundOn, found, effect, why }: DoubtOnPaper) =>
    `Rests on ${gearName(gear, gearNumber)}, found bad on ${formatDay(foundOn, 'en')}: ${written(found)}. ${effect === 'open' ? 'When this paper was made, nobody had decided yet what follows.' : `It was settled that it stays doubtful${why === null ? '' : `, because ${written(why)}`}.`}`,
  means: 'What rests on it proves nothing low. What is high counts as it stands.',
  /** Beside a cassette's figures on a custody sheet. */
  beside: 'gear in doubt, see notes',
  sheet: ({ gear, gearNumber, foundOn, found, effect, sampleNumbers }: DoubtOnSheet) =>
    `${gearTitle(gear, gearNumber)} was found bad on ${formatDay(foundOn, 'en')}: ${written(found)}; ${standing[effect]}. ${sampleNumbers.length === 1 ? 'Cassette' : 'Cassettes'} ${formatList(sampleNumbers, 'en')} ${sampleNumbers.length === 1 ? 'rests' : 'rest'} on it${gear === 'lot' ? '' : ', with the flows and volumes printed here'}.`,
};

interface NoticeGear {
  readonly heading: string;
  readonly line: (doubt: DoubtOnPaper) => string;
  readonly means: string;
  /** Only while nobody has decided. */
  readonly follows: string;
}

const notice: NoticeGear = {
  heading: 'The measuring gear is in doubt',
  line: ({ gear, gearNumber, foundOn, effect }) =>
    `${gearTitle(gear, gearNumber)}${gear === 'lot' ? ' of the filter cassettes' : ''} was used for this measurement, and was found bad on ${formatDay(foundOn, 'en')}. ${effect === 'open' ? 'What that means for this result is not settled yet.' : 'What that means for this result could not be settled: it stays in doubt.'}`,
  means: 'So a low figure here does not show that there was little lead in the air. A high figure counts as it stands.',
  follows: 'If the result changes once this is settled, a new notice follows.',
};

const gearEs = {
  pump: (number: string) => `La bomba ${number}`,
  meter: (number: string) => `El medidor de flujo ${number}`,
  lot: (number: string) => `El lote ${number} de los casetes`,
} as const;

const noticeEs: NoticeGear = {
  heading: 'El equipo de medición está en duda',
  line: ({ gear, gearNumber, foundOn, effect }) =>
    `${gearEs[gear](gearNumber)} se usó para esta medición, y el ${formatDay(foundOn, 'es')} se encontró que estaba mal. ${effect === 'open' ? 'Todavía no está decidido qué quiere decir eso para este resultado.' : 'No se pudo aclarar qué quiere decir eso para este resultado: queda en duda.'}`,
  means:
    'Por eso, una cifra baja en este papel no demuestra que había poco plomo en el aire. Una cifra alta vale tal como está.',
  follows: 'Si el resultado cambia cuando esto se decida, habrá un aviso nuevo.',
};

/** Of the notice, by language. */
export const noticeGear = { en: notice, es: noticeEs } as const;

/** What a notice says of them, in the order in which it is read; the last line is what it means. */
export function noticeGearLines(doubts: readonly DoubtOnPaper[], language: keyof typeof noticeGear): readonly string[] {
  const words = noticeGear[language];
  const open = doubts.some(({ effect }) => effect === 'open');
  return [...doubts.map(words.line), open ? `${words.means} ${words.follows}` : words.means];
}
