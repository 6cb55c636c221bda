/**
 * Somebody with a right to see asks at the door, the supervisor holds the phone out: first which site. Afterwards one site is on the
 * screen, and nothing of any other.
 */
import { Line, Lines } from '#parts/Lines.tsx';
import { Page } from '#parts/Page.tsx';
import { useRegisters } from '#store/hooks.ts';
import { en as words } from '#words/inspector.ts';

export function Inspector() {
  const registers = useRegisters();
  if (registers === undefined) return <Page heading={words.heading} back="/" />;
  const sites = registers.sites.list;
  return (
    <Page heading={words.heading} over={words.over} back="/">
      <p>{words.intro}</p>
      <Lines whenEmpty={words.none}>
        {sites.map(({ id, name, stateCode }) => (
          <Line key={id} to={`/inspector/${id}`} detail={stateCode}>
            {name}
          </Line>
        ))}
      </Lines>
    </Page>
  );
}
