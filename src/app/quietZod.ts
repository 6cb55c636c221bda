/**
 * zod, told before anything else that it may not make code from text: the security policy forbids that, and zod even asks by trying.
 * The build puts this file wherever `zod` is imported (vite.config.ts), so that no schema is ever made before it was told, whatever the
 * order of the files. A browser test counts what the policy refuses, and finds nothing.
 */
import { config } from 'zod';

config({ jitless: true });

export * from 'zod';
