/** How often, and what steps down, from the limit set: 29 CFR 1926.62(d)(6). */
import type { LimitSet } from '#reference/limits.ts';
import type { Schedule } from './course.ts';

export type Repeated = Extract<Schedule, 'sixMonthly' | 'quarterly'>;

export interface CourseRule {
  readonly monthsBySchedule: Readonly<Record<Repeated, number>>;
  readonly paragraphBySchedule: Readonly<Record<Schedule, string>>;
  readonly stopParagraph: string;
  readonly stepDownParagraph: string;
  readonly changeParagraph: string;
  /** So many occasions in a row, so many calendar days apart. */
  readonly consecutive: number;
  readonly daysApart: number;
}

/** null where the set holds no duties, or none that the course can be read from. */
export function courseRuleOf({ duties }: LimitSet): CourseRule | null {
  const fromActionLevel = duties?.bands.find(({ from }) => from === 'actionLevel');
  const fromPel = duties?.bands.find(({ from }) => from === 'pel');
  if (!duties || !fromActionLevel || !fromPel) return null;
  const { stop, stepDown } = duties;
  return {
    monthsBySchedule: { sixMonthly: fromActionLevel.everyMonths.value, quarterly: fromPel.everyMonths.value },
    paragraphBySchedule: {
      undetermined: '(d)(3)',
      none: '(d)(6)(i)',
      sixMonthly: fromActionLevel.paragraph,
      quarterly: fromPel.paragraph,
    },
    stopParagraph: stop.paragraph,
    stepDownParagraph: stepDown.paragraph,
    changeParagraph: '(d)(7)',
    consecutive: Math.max(stop.consecutive.value, stepDown.consecutive.value),
    daysApart: Math.max(stop.daysApart.value, stepDown.daysApart.value),
  };
}
