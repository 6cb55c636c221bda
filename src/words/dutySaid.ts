/** What a sentence about a duty is made of. */
import type { RoundingDirection } from '#core/rounding.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import { formatDay, formatInWorking, formatList, formatNumber, inSentence } from './quantity.ts';

/** How ids are called in sentences. */
export interface DutyNames {
  /** null: not to be named, so counted. */
  readonly worker: (id: string) => string | null;
  readonly site: (id: string) => string;
  readonly task: (id: string) => string;
  /** Nobody else is named either: who asked for records. */
  readonly hidesNames?: boolean;
}

export interface Said {
  readonly workers: string;
  readonly site: string;
  readonly tasks: string;
  /** A day of the duty's params, in words; '' where it has none. */
  readonly day: (key: string) => string;
  readonly params: Duty['params'];
}

export interface KindInWords {
  /** What to do: a sentence that goes on with 'by Friday 4 December'. */
  readonly what: (said: Said) => string;
  readonly fulfils: string;
  /** What is asked about where it lies; null: it lies in this book. */
  readonly lies: string | null;
  /** Where the table's word for whose decision it is says too little. */
  readonly whose?: string;
}

/** Four names at most; who is not named is counted. */
function workersOf(people: readonly (string | null)[]): string {
  const named = people.filter((name) => name !== null);
  const unnamed = people.length - named.length;
  if (named.length > 4) return `${named.slice(0, 3).join(', ')} and ${people.length - 3} more`;
  return formatList(unnamed === 0 ? named : [...named, unnamed === 1 ? 'a worker' : `${unnamed} workers`]);
}

export const saidOf = (duty: Duty, names: DutyNames): Said => {
  const day = (key: string): string => {
    const value = duty.params[key];
    return typeof value === 'string' && value !== '' ? formatDay(value) : '';
  };
  const tasks = String(duty.params.tasks ?? '')
    .split('+')
    .filter((id) => id !== '');
  return {
    workers: workersOf(duty.workerIds.map(names.worker)),
    site: duty.siteId === null ? '' : names.site(duty.siteId),
    tasks: formatList(tasks.map(names.task).map(inSentence)),
    day,
    params: names.hidesNames ? { ...duty.params, by: 'somebody' } : duty.params,
  };
};

/** ' at the old library'; '' where no site is meant. */
export const at = ({ site }: Said): string => (site === '' ? '' : ` at ${site}`);
export const paper = (what: string): string => `${what}: where does it lie?`;
export const seen = 'Who saw to it, on which day, and where a note of it lies.';

/** Limits are whole numbers or the firm's own: a level is never rounded onto or over one. Bounds are rounded outwards. */
export function printedLevel(value: number, params: Duty['params'], direction: RoundingDirection = 'nearest'): string {
  if (Number.isInteger(value)) return formatInWorking(value, 'µg/m³');
  const own = params.ownLimitUgPerM3;
  const against = [Math.floor(value), Math.ceil(value), ...(typeof own === 'number' ? [own] : [])];
  return `${formatNumber(value, 'µg/m³', { against }, direction)}\u00a0µg/m³`;
}
