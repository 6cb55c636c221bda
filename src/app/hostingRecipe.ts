/** The README's recipes for serving the built files elsewhere, printed from the one source of headers. */
import { cacheOfHashed, cacheOfOthers, headersOfAll, headersOfHttps } from './responseHeaders.ts';

export const recipeStart = '<!-- headers:start -->';
export const recipeEnd = '<!-- headers:end -->';

const all = Object.entries({ ...headersOfAll, ...headersOfHttps });
const fenced = (language: string, lines: readonly string[]): string => `\`\`\`${language}\n${lines.join('\n')}\n\`\`\``;

/** A location with headers of its own takes none from around it in nginx: so the list stands in both. */
function nginx(): string {
  const headers = all.map(([name, value]) => `add_header ${name} "${value}" always;`);
  const inside = (cache: string) =>
    [...headers, `add_header Cache-Control "${cache}" always;`].map((line) => `    ${line}`);
  return fenced('nginx', [
    'server {',
    '  listen 443 ssl;',
    '  server_name notebook.example;   # certificate lines as usual',
    '  root /srv/fullshift;            # the files of dist',
    '  location / {',
    ...inside(cacheOfOthers),
    '  }',
    '  location ~ /assets/ {',
    ...inside(cacheOfHashed),
    '  }',
    '}',
  ]);
}

function caddy(): string {
  return fenced('caddy', [
    'notebook.example {',
    '  root * /srv/fullshift',
    '  file_server',
    '  header {',
    ...all.map(([name, value]) => `    ${name} "${value}"`),
    '  }',
    '  @hashed path */assets/*',
    `  header @hashed Cache-Control "${cacheOfHashed}"`,
    '  @others not path */assets/*',
    `  header @others Cache-Control "${cacheOfOthers}"`,
    '}',
  ]);
}

function apache(): string {
  return fenced('apache', [
    '# .htaccess beside index.html; needs mod_headers and mod_setenvif',
    ...all.map(([name, value]) => `Header always set ${name} "${value}"`),
    `Header always set Cache-Control "${cacheOfOthers}"`,
    'SetEnvIf Request_URI "/assets/[^/]+$" hashed',
    `Header always set Cache-Control "${cacheOfHashed}" env=hashed`,
  ]);
}

/** Markdown, to stand in README.md between the two marks. */
export const hostingRecipe = (): string => ['nginx:', nginx(), 'Caddy:', caddy(), 'Apache:', apache()].join('\n\n');
