/** Who may import whom (style.md section 6, amended in DEVELOPERS.md). One list; the layer test runs it through dependency-cruiser. */
import type { IForbiddenRuleType } from 'dependency-cruiser';

const layers = [
  'core',
  'reference',
  'records',
  'findings',
  'words',
  'documents',
  'store',
  'parts',
  'screens',
  'app',
  'cli',
] as const;
type Layer = (typeof layers)[number];

const mayImport: Record<Layer, readonly Layer[]> = {
  core: [],
  reference: ['core'],
  records: ['core'],
  findings: ['core', 'reference', 'records'],
  words: ['core', 'reference', 'records', 'findings'],
  documents: ['core', 'records', 'findings', 'words'],
  store: ['core', 'records'],
  parts: ['core', 'words'],
  screens: ['core', 'reference', 'records', 'findings', 'documents', 'words', 'store', 'parts'],
  app: layers,
  cli: layers,
};

/** Layers whose imports of these layers must vanish at compile time: a sentence may know a finding's type, never call it. */
const typesOnly: readonly (readonly [Layer, readonly Layer[]])[] = [['words', ['reference', 'records', 'findings']]];

const packagesOf: Record<Layer, readonly string[]> = {
  core: ['date-fns', '@date-fns/tz'],
  reference: ['zod'],
  records: ['zod', 'date-fns', '@noble/hashes'],
  findings: [],
  words: ['date-fns', '@date-fns/tz'],
  documents: ['pdfkit', 'uqr'],
  store: ['dexie', 'dexie-react-hooks', 'fflate', 'age-encryption', 'react', '@noble/hashes'],
  parts: ['react'],
  screens: ['react', 'wouter'],
  app: ['react', 'react-dom', 'wouter', 'workbox-(?:core|precaching|routing|window)', 'zod'],
  cli: ['zod'],
};

const folder = (names: readonly string[]) => `^src/(${names.join('|')})/`;

const arrows: IForbiddenRuleType[] = layers.map((layer) => ({
  name: `${layer}-arrow`,
  comment: `src/${layer} may import only ${mayImport[layer].join(', ') || 'nothing of ours'}: move the code down, or hand the value in.`,
  severity: 'error',
  from: { path: folder([layer]) },
  to: { path: '^src/', pathNot: folder([layer, ...mayImport[layer]]) },
}));

const typeArrows: IForbiddenRuleType[] = typesOnly.map(([layer, targets]) => ({
  name: `${layer}-types-only`,
  comment: `src/${layer} may know only the types of ${targets.join(', ')}: write "import type".`,
  severity: 'error',
  from: { path: folder([layer]) },
  to: { path: folder(targets), dependencyTypesNot: ['type-only'] },
}));

const owners: IForbiddenRuleType[] = layers.map((layer) => ({
  name: `${layer}-packages`,
  comment: `src/${layer} may use only these packages: ${packagesOf[layer].join(', ') || 'none'}.`,
  severity: 'error',
  from: { path: folder([layer]) },
  to: {
    path: 'node_modules/',
    pathNot: `node_modules/(${['@types', ...packagesOf[layer]].join('|')})/`,
    dependencyTypesNot: ['type-only'],
  },
}));

export const forbidden: IForbiddenRuleType[] = [
  ...arrows,
  ...typeArrows,
  ...owners,
  {
    name: 'no-cycle',
    comment: 'Two files that need each other are one file, or need a third below them.',
    severity: 'error',
    from: {},
    to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
  },
  {
    name: 'resolvable',
    comment: 'An import that the checker cannot follow hides an arrow.',
    severity: 'error',
    from: { path: '^src/' },
    to: { couldNotResolve: true, pathNot: '\\?(worker&)?(url|raw)$' },
  },
  {
    name: 'shared-through-reference',
    comment: 'shared/ is read through src/reference alone.',
    severity: 'error',
    from: { path: '^src/', pathNot: '^src/reference/' },
    to: { path: '^shared/' },
  },
  {
    name: 'no-tests-in-src',
    comment: 'Nothing that ships imports tests.',
    severity: 'error',
    from: { path: '^(src|shared)/' },
    to: { path: '^tests/' },
  },
  {
    name: 'screens-are-siblings',
    comment: 'A screens folder never imports another: what both need is a part, a finding or a sentence.',
    severity: 'error',
    from: { path: '^src/screens/([^/]+)/' },
    to: { path: '^src/screens/', pathNot: '^src/screens/$1/' },
  },
  {
    name: 'documents-when-asked',
    comment: 'Screens load documents by dynamic import only: the PDF writer is not in the way of the first screen.',
    severity: 'error',
    from: { path: '^src/(screens|app)/' },
    to: { path: '^src/documents/', dependencyTypesNot: ['dynamic-import', 'type-only'] },
  },
  {
    name: 'react-in-hooks-only',
    comment: 'In src/store React stands in hooks.ts and the hooks/ folder alone.',
    severity: 'error',
    from: { path: '^src/store/', pathNot: '^src/store/hooks' },
    to: { path: 'node_modules/(react|dexie-react-hooks)/' },
  },
];

/** Files that something outside starts: every other file in src must be reachable from one of them. */
export const entries = [
  'src/app/main.tsx',
  'src/app/worker/sw.ts',
  'vite.config.ts',
  'src/app/quietZod.ts',
  'src/app/hostingRecipe.ts',
  'src/cli/assess.ts',
  'src/cli/dictionary.ts',
  'src/cli/daySchema.ts',
  'src/store/handOver/sealingWorker.ts',
];
