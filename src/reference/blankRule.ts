/**
 * How many field blanks go with a set of samples. The first page of the day reads it, so it is read without the schema library; that the
 * file is of its shape is held by tests/reference.
 */
import blankFile from '#shared/blanks/fieldBlanks.json';
import type { BlankRule } from './blankRuleFile.ts';
import { withSources } from './namedSources.ts';

let held: BlankRule | undefined;

export function blankRule(): BlankRule {
  held ??= withSources(blankFile) as BlankRule;
  return held;
}
