/** The sheet of the day and the labels, once the day is said: made on the tap and handed out. */

import { leastMinByWorker } from '#findings/season/leastMinutes.ts';
import { dayIn, tomorrowOf } from '#findings/season/tomorrow.ts';
import { HandedOut } from '#parts/HandedOut.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { useMadeFile } from '#store/hooks/useMadeFile.ts';
import { useDraft } from '#store/hooks.ts';
import { en } from '#words/tomorrowScreen.ts';
import { Labels } from './Labels.tsx';
import { occasionAt } from './occasionAt.ts';
import type { PaperChoice, PapersProps } from './paperChoice.ts';
import styles from './tomorrow.module.css';

const words = en.papers;

export function Papers(props: PapersProps) {
  const { shiftId, site, book, duties, meta, isChanged } = props;
  const draft = useDraft<PaperChoice>('book/dayPapers', { paper: 'letter', shownAs: 'name' });
  const { paper, shownAs } = draft.value;
  const tomorrow = tomorrowOf(book, shiftId, duties);
  const sheet = useMadeFile({
    name: words.sheetName(site.name, dayIn(shiftId)),
    type: 'application/pdf',
    of: JSON.stringify([tomorrow, paper, shownAs]),
    make: async () => {
      const { makeTomorrowPdf } = await import('#documents/tomorrowPdf.ts');
      const leastMin = leastMinByWorker(tomorrow, book);
      const given = { tomorrow, book, leastMinByWorker: leastMin, shownAs, paper };
      return (await makeTomorrowPdf({ ...(await occasionAt(site, meta)), ...given })).bytes;
    },
  });
  if (tomorrow.asked === null)
    return (
      <section className={styles.part}>
        <h2>{words.heading}</h2>
        <p>{words.first}</p>
      </section>
    );
  return (
    <>
      <section className={styles.part}>
        <h2>{words.heading}</h2>
        {isChanged && <p className={styles.quiet}>{words.unsaved}</p>}
        <div className={styles.two}>
          <SelectField
            name="paper"
            label={words.paper}
            options={(['letter', 'a4'] as const).map((value) => ({ value, label: words.papers[value] }))}
            value={paper}
            onChange={(value) => draft.set({ paper: value as PaperChoice['paper'], shownAs })}
          />
          <SelectField
            name="shownAs"
            label={words.shownAs}
            options={(['name', 'identifier'] as const).map((value) => ({ value, label: words.shown[value] }))}
            value={shownAs}
            onChange={(value) => draft.set({ paper, shownAs: value as PaperChoice['shownAs'] })}
          />
        </div>
        <div>
          <QuietAction busy={sheet.state === 'making'} onClick={() => void sheet.handOut()}>
            {sheet.state === 'making' ? words.making : words.sheet}
          </QuietAction>
        </div>
        <HandedOut state={sheet.state} outcome={sheet.outcome} />
      </section>
      <Labels {...props} tomorrow={tomorrow} shownAs={shownAs} />
    </>
  );
}
