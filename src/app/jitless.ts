/**
 * The security policy forbids code made from text, which zod would otherwise compile for speed; it even asks by trying. Its setting is
 * left where zod looks for it (the same object that `z.config` writes to), so that the first page need not wait for zod itself. Must be
 * imported before anything else. A browser test counts what the policy refuses, and finds nothing.
 */
const settings = globalThis as { __zod_globalConfig?: { jitless?: boolean } };

settings.__zod_globalConfig = { ...settings.__zod_globalConfig, jitless: true };
