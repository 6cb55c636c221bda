import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { noticesText } from '../../tools/notices.mjs';

test('the third-party notices name every package that ships (else: node tools/notices.mjs)', () => {
  const committed = readFileSync('public/third-party.txt', 'utf8');
  expect(committed).toBe(noticesText());
  for (const name of ['react', 'dexie', 'pdfkit', 'zod']) expect(committed).toContain(`\n${name} `);
});
