/** The top-level error page: a bug, or a piece of the app that could not be loaded. What was written down is safe and is said to be. */
import { Component, type ReactNode } from 'react';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { noteError } from '#store/lastErrors.ts';
import { en as words } from '#words/shell.ts';
import styles from './shell.module.css';

interface State {
  readonly error: unknown;
  readonly failed: boolean;
}

export class Failure extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { failed: false, error: null };

  static getDerivedStateFromError(error: unknown): State {
    return { failed: true, error };
  }

  /** Going to another page leaves the error behind. */
  private readonly leave = (): void => {
    if (this.state.failed) this.setState({ failed: false, error: null });
  };

  override componentDidCatch(error: unknown): void {
    noteError(error);
  }

  override componentDidMount(): void {
    window.addEventListener('hashchange', this.leave);
  }

  override componentWillUnmount(): void {
    window.removeEventListener('hashchange', this.leave);
  }

  override render(): ReactNode {
    return this.state.failed ? <FailurePage error={this.state.error} /> : this.props.children;
  }
}

function FailurePage({ error }: { readonly error: unknown }) {
  const detail = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return (
    <Page
      heading={words.failed.heading}
      action={
        <>
          <MainAction onClick={() => window.location.reload()}>{words.failed.again}</MainAction>
          <QuietAction to="/">{words.failed.today}</QuietAction>
        </>
      }
    >
      <p role="alert">{words.failed.text}</p>
      <details>
        <summary className={styles.summary}>{words.failed.details}</summary>
        <p className={styles.detail}>{detail}</p>
      </details>
    </Page>
  );
}
