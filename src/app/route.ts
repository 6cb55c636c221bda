/** What is known of a page before it is loaded. */

/** The states that a page is looked at in by the accessibility journey; a page without a state fails there. */
export type PageState = 'empty' | 'filled' | 'error' | 'running';

export interface Route {
  readonly path: string;
  /** The component that the module exports: the name of its file. */
  readonly screen: string;
  /** Loads it when it is first needed. Every one of them is in the cache from the first visit on. */
  readonly load: () => Promise<object>;
  readonly states: readonly PageState[];
  /** Shown also while no book is open: first start, restore, reading matter. */
  readonly withoutBook?: boolean;
}
