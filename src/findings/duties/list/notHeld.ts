/** A site for which no duties are listed, because the rule that governs there is not held complete. */
import type { Governs } from '#reference/limits.ts';

export interface NotHeld {
  readonly siteId: string;
  readonly stateCode: string;
  readonly governs: Governs;
  /** The document that the figures are held against. */
  readonly document: string;
}
