import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: 'src/app',
  base: './',
  publicDir: '../../public',
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2022', sourcemap: true },
  plugins: [react()],
  test: { root: '.', environment: 'node', include: ['tests/**/*.test.{ts,tsx}'], exclude: ['tests/journeys/**', 'tests/bench/**'] },
});
