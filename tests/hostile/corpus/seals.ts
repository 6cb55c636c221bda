/** Sealed files: other seals, hostile headers, and bad files behind a good seal. */
import { armor, Encrypter } from 'age-encryption';
import { type BadFile, refused, taken } from '../badFile.ts';
import { blobOf, newLines, soundText } from '../making.ts';

const passphrase = 'walnut easel gravel canine unicorn lantern oboe';
const salt = 'A'.repeat(22);
const body = 'B'.repeat(43);
const stanza = (args: string): string => `-> ${args}\n${body}\n`;
const header =
  (...stanzas: readonly string[]) =>
  (): Blob =>
    blobOf(`age-encryption.org/v1\n${stanzas.join('')}--- ${'C'.repeat(43)}\n${'x'.repeat(500)}`);

/** Little work, so that the corpus stays quick: what is behind the seal matters here. */
async function sealed(content: string | Uint8Array): Promise<Uint8Array<ArrayBuffer>> {
  const encrypter = new Encrypter();
  encrypter.setPassphrase(passphrase);
  encrypter.setScryptWorkFactor(10);
  return (await encrypter.encrypt(content)) as Uint8Array<ArrayBuffer>;
}
const armoured = (inside: string): string =>
  `-----BEGIN AGE ENCRYPTED FILE-----\n${inside}\n-----END AGE ENCRYPTED FILE-----\n`;
const bad = (name: string, file: BadFile['file'], why: Parameters<typeof refused>[0]): BadFile => ({
  name,
  file,
  passphrase,
  expected: refused(why),
});

export const badSeals: readonly BadFile[] = [
  {
    name: 'sealed, and nobody gave the passphrase',
    file: async () => blobOf(await sealed(soundText())),
    expected: { kind: 'sealed' },
  },
  {
    name: 'sealed and sound',
    file: async () => blobOf(await sealed(soundText())),
    passphrase,
    expected: taken(newLines),
  },
  {
    name: 'sealed with another passphrase',
    file: async () => blobOf(await sealed(soundText())),
    passphrase: 'oboe oboe',
    expected: refused('wrongPassphrase'),
  },
  bad('a seal of work factor 30', header(stanza(`scrypt ${salt} 30`)), 'sealNotOurs'),
  bad('a seal of work factor 19', header(stanza(`scrypt ${salt} 19`)), 'sealNotOurs'),
  bad('a seal of work factor 1e9', header(stanza(`scrypt ${salt} 1e9`)), 'damaged'),
  bad('a seal of work factor 017', header(stanza(`scrypt ${salt} 017`)), 'damaged'),
  bad('a passphrase beside a key', header(stanza(`scrypt ${salt} 10`), stanza(`X25519 ${body}`)), 'sealNotOurs'),
  bad('a key beside a passphrase', header(stanza(`X25519 ${body}`), stanza(`scrypt ${salt} 10`)), 'sealNotOurs'),
  bad('two passphrases', header(stanza(`scrypt ${salt} 10`), stanza(`scrypt ${salt} 10`)), 'sealNotOurs'),
  bad('a key alone', header(stanza(`X25519 ${body}`)), 'sealNotOurs'),
  bad('a seal of nothing', header(), 'damaged'),
  bad(
    'a hundred thousand keys',
    header(...Array.from({ length: 100_000 }, () => stanza(`X25519 ${body}`))),
    'sealNotOurs',
  ),
  bad('a header without an end', () => blobOf(`age-encryption.org/v1\n-> scrypt ${'A'.repeat(20_000_000)}`), 'damaged'),
  bad('a seal of another version', () => blobOf('age-encryption.org/v9\nwhatever\n'), 'sealNotOurs'),
  bad('a sealed file cut in its payload', async () => blobOf((await sealed(soundText())).slice(0, -5)), 'damaged'),
  bad('a sealed file cut in its header', async () => blobOf((await sealed(soundText())).slice(0, 50)), 'damaged'),
  bad('a sealed picture', async () => blobOf(await sealed(Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]))), 'notABackup'),
  bad('sealed twice', async () => blobOf(await sealed(await sealed(soundText()))), 'notABackup'),
  bad('sealed nothing', async () => blobOf(await sealed('')), 'notABackup'),
  bad('sealed and cut before', async () => blobOf(await sealed(soundText().slice(0, -300))), 'damaged'),
  bad('armour around noise', () => blobOf(armoured(`${'z'.repeat(64)}\n`.repeat(40).trim())), 'damaged'),
  bad('armour around nothing', () => blobOf(armoured('')), 'damaged'),
  bad('armour without an end', async () => blobOf(armor.encode(await sealed(soundText())).slice(0, -40)), 'damaged'),
  bad(
    'armour of 60 MB',
    () =>
      blobOf(
        '-----BEGIN AGE ENCRYPTED FILE-----\n',
        new Uint8Array(60_000_000).fill(65),
        '\n-----END AGE ENCRYPTED FILE-----\n',
      ),
    'damaged',
  ),
  {
    name: 'armoured and sound',
    file: async () => blobOf(armor.encode(await sealed(soundText()))),
    passphrase,
    expected: taken(newLines),
  },
];
