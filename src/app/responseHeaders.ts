/**
 * The one source of the response headers: the preview server sends them, the built page carries what a page can carry, and the README's
 * recipes for other servers are printed from here. Tests hold all three against each other and against a real answer.
 */

/** Everything from this address and nothing else; scripts only as files; markup never from text. */
export const policy: Readonly<Record<string, string>> = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' blob:",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'font-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'frame-ancestors': "'none'",
  'object-src': "'none'",
  'require-trusted-types-for': "'script'",
  'trusted-types': 'app-sw app-sealing',
};

/** A page cannot forbid by itself that it is framed: browsers ignore that line in a meta element. */
const notInPage: ReadonlySet<string> = new Set(['frame-ancestors']);

const written = (lines: readonly (readonly [string, string])[]): string =>
  lines.map(([name, value]) => `${name} ${value}`).join('; ');

export const policyHeader: string = written(Object.entries(policy));
export const policyInPage: string = written(Object.entries(policy).filter(([name]) => !notInPage.has(name)));

/** Sent with every answer. The camera is for reading codes of labels, on this page alone and only where somebody taps for it. */
export const headersOfAll: Readonly<Record<string, string>> = {
  'Content-Security-Policy': policyHeader,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(self), geolocation=(), microphone=(), payment=(), usb=()',
};

/** Only where the site is served over https; a browser keeps it for a year. */
export const headersOfHttps: Readonly<Record<string, string>> = {
  'Strict-Transport-Security': 'max-age=31536000',
};

export const cacheOfHashed = 'public, max-age=31536000, immutable';
export const cacheOfOthers = 'no-cache';

/** Built files whose name carries a hash of what is in them; all others are asked for anew. */
export const isHashed = (path: string): boolean => /(^|\/)assets\/[^/]+$/.test(path);

export const headersFor = (path: string): Readonly<Record<string, string>> => ({
  ...headersOfAll,
  'Cache-Control': isHashed(path) ? cacheOfHashed : cacheOfOthers,
});
