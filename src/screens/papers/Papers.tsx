/**
 * Supervisor or office, before a job: the sign for the work area, the label for containers, blank forms for a day without the phone, in
 * two languages. Afterwards the paper lies in the printer; nothing of it is in the book.
 */
import { HandedOut } from '#parts/HandedOut.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { useBookMeta, useDraft, useRegisters } from '#store/hooks.ts';
import { en as words } from '#words/printPapers.ts';
import { BlankForm } from './BlankForm.tsx';
import styles from './papers.module.css';
import { type PaperSize, usePaper } from './usePaper.ts';

export function Papers() {
  const registers = useRegisters();
  const meta = useBookMeta();
  const draft = useDraft<{ readonly paper: PaperSize }>('book/papers', { paper: 'letter' });
  const { paper } = draft.value;
  const sign = usePaper(meta, {
    name: words.sign.fileName,
    of: `sign ${paper}`,
    make: async (occasion, fonts) => {
      const { makeSignPdf } = await import('#documents/signPdf.ts');
      return (await makeSignPdf({ ...occasion, paper, fonts })).bytes;
    },
  });
  if (registers === undefined || meta === undefined) return <Page heading={words.heading} back="/todo" />;
  return (
    <Page
      heading={words.heading}
      over={words.over}
      back="/todo"
      action={
        <MainAction busy={sign.state === 'making'} onClick={() => void sign.handOut()}>
          {sign.state === 'making' ? words.making : words.sign.action}
        </MainAction>
      }
      aside={
        <>
          <BlankForm meta={meta} sites={registers.sites.list} paper={paper} />
          <section className={styles.section}>
            <h2>{words.calendar.heading}</h2>
            <p>{words.calendar.text}</p>
            <Lines>
              <Line to="/todo">{words.calendar.toList}</Line>
            </Lines>
          </section>
        </>
      }
    >
      <p>{words.intro}</p>
      <SelectField
        name="paper"
        label={words.paper}
        options={(['letter', 'a4'] as const).map((value) => ({ value, label: words.papers[value] }))}
        value={paper}
        onChange={(value) => draft.set({ paper: value as PaperSize })}
      />
      <section className={styles.section}>
        <h2>{words.sign.heading}</h2>
        <p>{words.sign.text}</p>
        <HandedOut state={sign.state} outcome={sign.outcome} />
      </section>
    </Page>
  );
}
