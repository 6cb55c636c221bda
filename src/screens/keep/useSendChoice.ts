/** For whom the file is, what goes into it and how it is sealed: as it was last time, until it is changed. */
import { useState } from 'react';
import type { Partner } from '#store/handOver/handOver.ts';
import type { WishedFor } from '#store/hooks/useHandOver.ts';
import type { SendChoice } from '#store/sending.ts';
import { appVersion } from '#store/version.ts';

export interface Chosen {
  /** A partner's writer, or `newDevice`. */
  readonly partner: string;
  readonly part: 'lacking' | 'everything';
  readonly seal: SendChoice['seal'];
  /** null: none is there to seal with yet. */
  readonly passphrase: string | null;
  /** The passphrase is kept on this device for the next files. */
  readonly keep: boolean;
  /** Where the second file goes on with papers and pictures; null: the first file. */
  readonly filesFrom: string | null;
}

export const newDevice = 'new';

/** Who it went to last, else who was heard of last, else a device that nothing is known of. */
function usual(partners: readonly Partner[], last: SendChoice | null): string {
  const known = partners.find(({ writer }) => writer === last?.partner) ?? partners[0];
  return known?.writer ?? newDevice;
}

/** Words made here are made anew for each file; the firm's own are there again only if they were kept. */
const first = (partners: readonly Partner[], last: SendChoice | null): Chosen => ({
  partner: usual(partners, last),
  part: 'lacking',
  seal: last?.seal === 'own' ? 'own' : 'none',
  passphrase: last?.seal === 'own' ? last.passphrase : null,
  keep: last !== null && last.passphrase !== null,
  filesFrom: null,
});

function wishOf({ partner, part, seal, passphrase, filesFrom }: Chosen, known: Partner | undefined): WishedFor | null {
  if (seal !== 'none' && passphrase === null) return null;
  const lacking = known !== undefined && part === 'lacking';
  return {
    part: lacking ? 'lacking' : 'everything',
    partner: lacking ? partner : null,
    passphrase: seal === 'none' ? null : passphrase,
    writtenBy: appVersion,
    ...(filesFrom === null ? {} : { filesFrom }),
  };
}

/** What is remembered for the next file. */
export const kept = ({ seal, passphrase, keep }: Chosen, known: Partner | undefined): SendChoice => ({
  partner: known?.writer ?? null,
  seal,
  passphrase: seal === 'own' && keep ? passphrase : null,
});

export function useSendChoice(partners: readonly Partner[], last: SendChoice | null) {
  const [choice, setChoice] = useState<Chosen>(() => first(partners, last));
  const chosen = partners.find(({ writer }) => writer === choice.partner);
  const change = (changed: Partial<Chosen>) => setChoice((before) => ({ ...before, filesFrom: null, ...changed }));
  return { choice, chosen, wish: wishOf(choice, chosen), change } as const;
}
