/** The language of the part's own few words. `Page` sets it for what is inside, so that a worker's page is whole in one language. */
import { createContext, useContext } from 'react';
import { en, es, type Language, type PartsWords } from '#words/parts.ts';

export type { Language } from '#words/parts.ts';

const wordsByLanguage: Readonly<Record<Language, PartsWords>> = { en, es };

export const LanguageContext = createContext<Language>('en');

/** The words of the parts in the language of the page around them. */
export const usePartsWords = (): PartsWords => wordsByLanguage[useContext(LanguageContext)];
