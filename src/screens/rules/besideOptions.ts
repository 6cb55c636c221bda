/** What may be chosen to stand beside the rule, each with the figures that are known of it today. */
import type { ChoiceOption } from '#parts/Choice.tsx';
import { besideLimitsOn } from '#reference/besideSet.ts';
import { allLimitSets, besideSets, setOn } from '#reference/limits.ts';
import { en as words } from '#words/limitsBeside.ts';

export function besideOptions(on: string): readonly ChoiceOption[] {
  const rules = allLimitSets().map((file) => {
    const { actionLevel, pel } = setOn(on, file);
    return {
      value: file.id,
      label: words.day.set(file.jurisdiction, file.document),
      hint: [words.limit('actionLevel', actionLevel.value), words.limit('pel', pel.value)].join('; '),
    };
  });
  const others = besideSets().map((file) => {
    const limits = besideLimitsOn(on, file).map(({ which, value }) => words.besideLimit(which, value));
    return {
      value: file.id,
      label: words.day.set(file.jurisdiction, file.document),
      hint: limits.length === 0 ? words.besideNone : limits.join('; '),
    };
  });
  return [...rules, ...others];
}
