/** A named example of a part: what the gallery shows and what the tests of the part render. */
import type { ReactNode } from 'react';

export interface Example {
  readonly part: string;
  readonly name: string;
  readonly render: () => ReactNode;
}
