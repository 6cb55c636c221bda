/** Every part in its named examples: looked at by people, tested from the same list. */

import { examples as choices } from '#parts/examples/choices.tsx';
import type { Example } from '#parts/examples/example.ts';
import { examples as fields } from '#parts/examples/fields.tsx';
import { examples as figures } from '#parts/examples/figures.tsx';
import { examples as photos } from '#parts/examples/photos.tsx';
import { examples as plots } from '#parts/examples/plots.tsx';
import { examples as sayings } from '#parts/examples/sayings.tsx';
import { Page } from '#parts/Page.tsx';
import { en as words } from '#words/shell.ts';
import styles from './Gallery.module.css';

const Group = ({ examples }: { readonly examples: readonly Example[] }) => (
  <>
    {examples.map((example) => (
      <section key={example.part + example.name} className={styles.example}>
        <h2 className={styles.name}>
          {example.part}, {example.name}
        </h2>
        {example.render()}
      </section>
    ))}
  </>
);

/** The summary takes the focus and renames the window, as it should: here it would do so to the whole gallery. */
const calm = sayings.filter((example) => example.part !== 'ErrorSummary');

export function Gallery() {
  return (
    <Page
      heading={words.gallery}
      back="/about"
      aside={
        <>
          <Group examples={figures} />
          <Group examples={plots} />
          <Group examples={calm} />
        </>
      }
    >
      <Group examples={fields} />
      <Group examples={choices} />
      <Group examples={photos} />
    </Page>
  );
}
