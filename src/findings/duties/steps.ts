/** Work in small steps, so that a page that is looked at answers between them. */

export type Steps<T> = Generator<void, T>;

/** All steps at once. */
export function atOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
