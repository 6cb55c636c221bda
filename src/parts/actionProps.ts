/** What both kinds of action take: either a place to go, or something to do. */
import type { ReactNode } from 'react';

export interface ActionProps {
  readonly children: ReactNode;
  /** A path inside the app: renders a link. */
  readonly to?: string | undefined;
  readonly onClick?: (() => void) | undefined;
  readonly type?: 'button' | 'submit' | undefined;
  /** The id of a form elsewhere on the page that this button submits. */
  readonly form?: string | undefined;
  /** While the last tap is still being written down, further taps do nothing. */
  readonly busy?: boolean | undefined;
  readonly describedBy?: string | undefined;
}
