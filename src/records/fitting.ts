/**
 * Whether a value fits a schema, for whatever comes from outside. The schema library compares a number with its bounds before it has said
 * that it is none: an object whose `valueOf` and `toString` are no functions makes it throw. Such a value does not fit.
 */
import type { z } from 'zod';

export type Fitted<T> = { readonly success: true; readonly data: T } | { readonly success: false };

/** Never throws for what is in the value. */
export function fitted<S extends z.ZodType>(schema: S, value: unknown): Fitted<z.infer<S>> {
  try {
    return schema.safeParse(value) as Fitted<z.infer<S>>;
  } catch (error) {
    if (error instanceof TypeError) return { success: false };
    throw error;
  }
}
