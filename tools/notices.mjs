/** Writes public/third-party.txt: the licence of every package that ships in the app, and of the typeface in the papers. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './setUp.mjs';

const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));

function licenceText(folder) {
  const name = readdirSync(folder).find((file) => /^(licen[cs]e|copying)/i.test(file));
  return name ? readFileSync(join(folder, name), 'utf8').trim() : null;
}

function packageNotice([path, entry]) {
  const folder = join(root, path);
  const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
  const { author, license = entry.license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const by = typeof author === 'string' ? author : author?.name;
  const text = licenceText(folder) ?? `${license} licence${by ? `, by ${by}` : ''}. The package ships no licence file.`;
  return `${name} ${entry.version} (${license})\n\n${text}`;
}

const wordsNotice = `Words of the passphrases (Creative Commons Attribution)

Electronic Frontier Foundation, Large Wordlist for Passphrases, 2016
https://www.eff.org/files/2016/07/18/eff_large_wordlist.txt`;

export function noticesText() {
  const shipped = Object.entries(lock.packages)
    .filter(
      ([path, entry]) =>
        path.includes('node_modules/') && !entry.dev && !entry.devOptional && existsSync(join(root, path)),
    )
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const fonts = join(root, 'src', 'documents', 'fonts');
  const fontText = existsSync(fonts) ? licenceText(fonts) : null;
  const parts = [
    'Fullshift is made with the work of others. Each is named here with its licence.',
    ...shipped.map(packageNotice),
    wordsNotice,
    ...(fontText ? [`Typeface of the papers\n\n${fontText}`] : []),
  ];
  return `${parts.join(`\n\n${'-'.repeat(72)}\n\n`).replaceAll('\r\n', '\n')}\n`;
}

if (process.argv[1]?.endsWith('notices.mjs')) writeFileSync(join(root, 'public', 'third-party.txt'), noticesText());
