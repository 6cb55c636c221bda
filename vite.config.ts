import react from '@vitejs/plugin-react';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { host, port } from './src/app/address.ts';
import { responseHeadersPlugin } from './src/app/headersPlugin.ts';
import { manifest } from './src/app/manifest.ts';

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
  },
  preview: { host, port, strictPort: true },
  plugins: [
    react(),
    responseHeadersPlugin(),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      manifest: { ...manifest, icons: [...manifest.icons] },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,ttf,json,webmanifest,txt}'],
        globIgnores: ['**/*.map'],
        navigateFallback: 'index.html',
        cleanupOutdatedCaches: true,
        // The very first visit is served from the device as soon as everything is stored, without loading the page again.
        clientsClaim: true,
        maximumFileSizeToCacheInBytes: 4 * 1024 * 1024,
      },
    }),
  ],
  test: {
    root: '.',
    environment: 'node',
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/journeys/**', 'tests/bench/**'],
  },
});
