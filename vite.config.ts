import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { type ManifestOptions, VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { host, port } from './src/app/address.ts';
import { responseHeadersPlugin } from './src/app/headersPlugin.ts';
import { manifest } from './src/app/manifest.ts';

const quietZodFile = fileURLToPath(new URL('src/app/quietZod.ts', import.meta.url));

/** Every import of zod in the built app is one of src/app/quietZod.ts. */
const quietZod: Plugin = {
  name: 'quiet-zod',
  enforce: 'pre',
  apply: 'build',
  resolveId: (source, importer) =>
    source === 'zod' && importer !== undefined && !importer.endsWith('quietZod.ts') ? quietZodFile : null,
};

const pureTests = ['core', 'reference', 'words', 'published', 'findings', 'records', 'documents'].map(
  (layer) => `tests/${layer}/**/*.test.ts`,
);

export default defineConfig({
  root: 'src/app',
  base: './',
  publicDir: '../../public',
  // Pictures written into the page as data: addresses are refused by the content policy, so nothing is inlined.
  build: {
    outDir: '../../dist',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: true,
    assetsInlineLimit: 0,
    // The maker of PDF files is one chunk of its own, fetched when the first sheet is made.
    chunkSizeWarningLimit: 600,
  },
  worker: { format: 'es' },
  preview: { host, port, strictPort: true },
  plugins: [
    quietZod,
    react(),
    responseHeadersPlugin(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      manifest: structuredClone(manifest) as unknown as Partial<ManifestOptions>,
      strategies: 'injectManifest',
      srcDir: 'worker',
      filename: 'sw.ts',
      injectManifest: {
        // Everything that was built, whatever its ending: the papers' typeface and colour profile too.
        globPatterns: ['**/*'],
        globIgnores: ['**/*.map', 'sw.js'],
        // One classic script with its runtime in it: see worker/sw.ts.
        rollupFormat: 'iife',
        sourcemap: false,
        maximumFileSizeToCacheInBytes: 4 * 1024 * 1024,
      },
    }),
  ],
  test: {
    root: '.',
    environment: 'node',
    // a busy machine is no defect; a hang is
    testTimeout: 60_000,
    // Left to itself the runner keeps one core free; of two that is half.
    maxWorkers: '100%',
    hookTimeout: 60_000,
    projects: [
      {
        // Pure layers keep nothing between files, so that each module is read once for all of them.
        extends: true,
        test: { name: 'pure', include: pureTests, isolate: false },
      },
      {
        extends: true,
        test: {
          name: 'whole',
          setupFiles: ['tests/house/patience.ts'],
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...pureTests, 'tests/journeys/**', 'tests/bench/**'],
        },
      },
    ],
  },
});
