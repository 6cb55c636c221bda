/** Sealed or not: the app's own seven words shown large, once; or a passphrase that the firm has agreed on. */
import { useState } from 'react';
import { Choice, ChoiceRow } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Notice } from '#parts/Notice.tsx';
import { PassphraseField } from '#parts/PassphraseField.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { en as words } from '#words/handOver.ts';
import styles from './keep.module.css';
import type { Chosen } from './useSendChoice.ts';

export interface SealFieldsProps {
  readonly choice: Chosen;
  readonly onChange: (changed: Partial<Chosen>) => void;
}

/** The list of words is loaded when it is needed. */
const madeWords = async (): Promise<string> => (await import('#store/handOver/passphrase.ts')).newPassphrase();

export function SealFields({ choice: { seal, passphrase, keep }, onChange }: SealFieldsProps) {
  const choose = async (next: Chosen['seal']) => {
    onChange({ seal: next, passphrase: null });
    if (next === 'made') onChange({ passphrase: await madeWords() });
  };
  return (
    <>
      <Choice
        name="seal"
        label={words.seal}
        options={(['none', 'made', 'own'] as const).map((value) => ({ value, ...words.seals[value] }))}
        value={seal}
        onChange={(next) => void choose(next)}
      />
      {seal === 'none' && <p className={styles.warning}>{words.plainWarning}</p>}
      {seal === 'made' && passphrase !== null && (
        <MadeWords passphrase={passphrase} onAgain={async () => onChange({ passphrase: await madeWords() })} />
      )}
      {seal === 'own' && (
        <OwnPassphrase
          used={passphrase}
          kept={keep}
          onUse={(used) => onChange({ passphrase: used })}
          onKept={(now) => onChange({ keep: now })}
        />
      )}
    </>
  );
}

function MadeWords({ passphrase, onAgain }: { readonly passphrase: string; readonly onAgain: () => void }) {
  const [copied, setCopied] = useState(false);
  const copy = async () => {
    await navigator.clipboard?.writeText(passphrase).then(
      () => setCopied(true),
      () => undefined,
    );
  };
  return (
    <section className={styles.section} aria-label={words.words.label}>
      <h2>{words.words.label}</h2>
      <p className={styles.words} translate="no">
        {passphrase}
      </p>
      <p className={styles.warning}>{words.words.note}</p>
      <div className={styles.actions}>
        <QuietAction onClick={() => void copy()}>{words.words.copy}</QuietAction>
        <QuietAction onClick={onAgain}>{words.words.again}</QuietAction>
      </div>
      {copied && <Notice>{words.words.copied}</Notice>}
    </section>
  );
}

interface OwnPassphraseProps {
  readonly used: string | null;
  readonly kept: boolean;
  readonly onUse: (passphrase: string | null) => void;
  readonly onKept: (kept: boolean) => void;
}

function OwnPassphrase({ used, kept, onUse, onKept }: OwnPassphraseProps) {
  const [typed, setTyped] = useState(used ?? '');
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const use = async () => {
    const { isStrongEnough } = await import('#store/handOver/passphrase.ts');
    const strong = isStrongEnough(typed.trim());
    setErrors(strong ? [] : [{ field: 'passphrase', text: words.own.short }]);
    onUse(strong ? typed.trim() : null);
  };
  return (
    <form
      noValidate
      className={styles.section}
      onSubmit={(event) => {
        event.preventDefault();
        void use();
      }}
    >
      <ErrorSummary errors={errors} />
      <PassphraseField
        name="passphrase"
        label={words.own.label}
        hint={words.own.hint}
        use="new"
        value={typed}
        onChange={(text) => {
          setTyped(text);
          if (used !== null) onUse(null);
        }}
        error={errorOf(errors, 'passphrase')}
      />
      <ChoiceRow
        kind="checkbox"
        name="keepPassphrase"
        option={{ value: 'keep', label: words.own.keep, hint: words.own.keepHint }}
        checked={kept}
        onChange={() => onKept(!kept)}
      />
      {used === null && (
        <div>
          <QuietAction type="submit">{words.own.use}</QuietAction>
        </div>
      )}
    </form>
  );
}
