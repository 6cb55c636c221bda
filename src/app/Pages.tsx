/** Chooses the page for the address. Without an open book only the pages that need none are shown; any other becomes the first page. */
import { Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { Page } from '#parts/Page.tsx';
import { useBookState } from '#store/hooks.ts';
import { en as words } from '#words/shell.ts';
import { BookTrouble } from './BookTrouble.tsx';
import { type Route as RouteLine, routeTable } from './routeTable.ts';
import { screenFor } from './screens.ts';
import styles from './shell.module.css';

const start = routeTable.find((route) => route.path === '/start');

export function Pages() {
  return (
    <Suspense fallback={<Quiet text={words.loading} />}>
      <Switch>
        {routeTable.map((route) => (
          <Route key={route.path} path={route.path}>
            {(params) => <PageOf route={route} params={params as Readonly<Record<string, string>>} />}
          </Route>
        ))}
        <Route>
          <Page heading={words.notFound.heading} back="/">
            <p>{words.notFound.text}</p>
          </Page>
        </Route>
      </Switch>
    </Suspense>
  );
}

function PageOf({ route, params }: { readonly route: RouteLine; readonly params: Readonly<Record<string, string>> }) {
  const state = useBookState();
  if (state.kind === 'opening') return <Quiet text={words.opening} />;
  if (state.kind !== 'open' && !route.withoutBook) {
    if (state.kind === 'newerVersion' || state.kind === 'failed') return <BookTrouble state={state} />;
    return start ? <Shown route={start} params={{}} /> : null;
  }
  return <Shown route={route} params={params} />;
}

/** An address that somebody mistyped is no reason to fail: it names a record that is not there. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** Another record under the same path is another page: its key starts it afresh. */
function Shown({ route, params }: { readonly route: RouteLine; readonly params: Readonly<Record<string, string>> }) {
  const Screen = screenFor(route);
  const named = Object.fromEntries(
    Object.entries(params)
      .filter(([name]) => Number.isNaN(Number(name)))
      .map(([name, value]) => [name, decoded(value)]),
  );
  return <Screen key={route.path + JSON.stringify(named)} {...named} />;
}

function Quiet({ text }: { readonly text: string }) {
  return (
    <main className={styles.quiet} id="page">
      <p role="status">{text}</p>
    </main>
  );
}
