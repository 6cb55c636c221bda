/** Must be imported before anything parses: the security policy forbids the code that zod would otherwise compile for speed. */
import { config } from 'zod';

config({ jitless: true });
