/** Two languages, each named in itself, side by side. */
import { QuietAction } from '#parts/QuietAction.tsx';
import { en as gear } from '#words/gear.ts';
import styles from './fitting.module.css';

export type WorkerLanguage = 'en' | 'es';

export interface LanguageSwitchProps {
  readonly label: string;
  readonly language: WorkerLanguage;
  readonly onChange: (language: WorkerLanguage) => void;
}

export function LanguageSwitch({ label, language, onChange }: LanguageSwitchProps) {
  return (
    <fieldset className={styles.languages} aria-label={label}>
      {(['en', 'es'] as const)
        .filter((code) => code !== language)
        .map((code) => (
          <span key={code} lang={code}>
            <QuietAction onClick={() => onChange(code)}>{gear.person.languages[code]}</QuietAction>
          </span>
        ))}
    </fieldset>
  );
}
