/** Issuing a paper from a page: busy while it is made and written; a second tap meanwhile does nothing and answers null. */
import { useCallback, useRef, useState } from 'react';
import { type Issue, type IssueOutcome, issuePaper } from '../issuing.ts';

export interface Issuing {
  readonly busy: boolean;
  readonly issue: <V>(wanted: Issue<V>) => Promise<IssueOutcome | null>;
}

export function useIssuing(): Issuing {
  const [busy, setBusy] = useState(false);
  const running = useRef(false);
  const issue = useCallback(async <V>(wanted: Issue<V>) => {
    if (running.current) return null;
    running.current = true;
    setBusy(true);
    try {
      return await issuePaper(wanted);
    } finally {
      running.current = false;
      setBusy(false);
    }
  }, []);
  return { busy, issue };
}
