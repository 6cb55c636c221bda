/** Which rules and which formulas a figure was made with: printed on every paper. Made from their content, so no edit is missed. */
import { formulary } from '#core/formulary.ts';
import { blankRule } from './blankRule.ts';
import { allDutyTables } from './duties.ts';
import { flowTolerance } from './flowTolerance.ts';
import { allLimitSets, besideSets } from './limits.ts';
import { methods } from './methods.ts';
import { presumedTiers, ruleTasks } from './presumption.ts';
import { respirators } from './respirators.ts';
import { states } from './states.ts';
import { everydayTasks } from './tasks.ts';

export interface Editions {
  readonly rules: string;
  readonly formulas: string;
}

/** FNV-1a over the text, 32 bits: tells one content from another, proves nothing. */
function fingerprint(content: unknown): string {
  let hash = 0x811c9dc5;
  for (const character of JSON.stringify(content)) {
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, '0');
}

/** The latest day on which any source of the content was read. */
function latestReadOn(content: unknown): string {
  const days = [...JSON.stringify(content).matchAll(/"readOn":"(\d{4}-\d\d-\d\d)"/g)].map((match) => match[1] ?? '');
  return days.sort().at(-1) ?? 'unread';
}

let held: Editions | undefined;

/** Rules: day of the last reading and fingerprint of the data. Formulas: their number and fingerprint of what they say. */
export function editions(): Editions {
  if (held) return held;
  const rules = [
    allLimitSets(),
    besideSets(),
    states(),
    presumedTiers(),
    ruleTasks(),
    everydayTasks(),
    respirators(),
    methods(),
    flowTolerance(),
    blankRule(),
    allDutyTables(),
  ];
  const formulas = [...formulary.values()].map(({ name, unit, inputs, expression, source }) => [
    name,
    unit,
    inputs,
    expression,
    source,
  ]);
  held = {
    rules: `${latestReadOn(rules)}.${fingerprint(rules)}`,
    formulas: `${formulas.length}.${fingerprint(formulas)}`,
  };
  return held;
}
