// The walls of the house: one door per room, imports only run downward (see docs/decisions/0001).
const order = [
  'quantity',
  'measure',
  'linkage',
  'fasten',
  'gauge',
  'adjust',
  'corner',
  'spec',
  'kit',
  'clamp',
  'plan',
  'findings',
  'job',
  'sheet',
  'proof',
  'store',
  'hub',
  'cli',
]
const pure = order.slice(0, order.indexOf('proof'))
const group = (rooms) => `^src/(${rooms.join('|')})/`

const upward = order.slice(0, -1).map((room, i) => ({
  name: `${room}-imports-downward`,
  severity: 'error',
  comment: `${room}/ may import only the rooms below it (${order.slice(0, i).join(', ') || 'none'}). What it wants from above belongs lower, or comes in as an argument.`,
  from: { path: `^src/${room}/` },
  to: { path: group([...order.slice(i + 1), 'web']) },
}))

module.exports = {
  forbidden: [
    ...upward,
    {
      name: 'web-beside-cli-and-hub',
      severity: 'error',
      comment:
        'web/ stands beside cli/ and hub/ and imports neither. Shared things belong in sheet/ or lower.',
      from: { path: '^src/web/' },
      to: { path: '^src/(cli|hub)/' },
    },
    {
      name: 'cli-not-web',
      severity: 'error',
      comment: 'cli/ does not import web/. Shared things belong in sheet/ or lower.',
      from: { path: '^src/cli/' },
      to: { path: '^src/web/' },
    },
    {
      name: 'one-door',
      severity: 'error',
      comment:
        'Import another room by its index.ts only. If the thing is not at the door, put it there or keep it inside.',
      from: { path: '^src/([^/]+)/' },
      to: {
        path: '^src/[^/]+/',
        pathNot: ['^src/$1/', '^src/[^/]+/index\\.ts$', '^src/store/browser/index\\.ts$'],
      },
    },
    {
      name: 'store-has-two-doors',
      severity: 'error',
      comment:
        'store/index.ts is of files and needs Node; what runs in a browser comes by store/browser/index.ts, to which nothing of Node leads.',
      from: { path: '^src/web/' },
      to: { path: '^src/store/index\\.ts$' },
    },
    {
      name: 'browser-without-node',
      severity: 'error',
      comment: 'What runs in a browser leads to no Node module, by no way round.',
      from: { path: '^src/store/browser/' },
      to: { path: '^(node:)?(fs|os|path|url|util|crypto|process|timers|stream)(/|$)', reachable: true },
    },
    {
      name: 'no-circles',
      severity: 'error',
      comment: 'Two files that need each other are one idea, or hide a third one.',
      from: {},
      to: { circular: true },
    },
    {
      name: 'pure-rooms-depend-on-nothing',
      severity: 'error',
      comment: 'Pure rooms use no package and no Node module; zod only in *-schema.ts files.',
      from: { path: group(pure), pathNot: '-schema\\.ts$' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'core', 'npm-no-pkg', 'npm-unknown'] },
    },
    {
      name: 'only-zod-in-schemas',
      severity: 'error',
      comment: 'A schema file of a pure room uses zod and nothing else from outside.',
      from: { path: '^src/(?!web|cli).*-schema\\.ts$' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'core'], pathNot: 'node_modules/zod/' },
    },
    {
      name: 'not-found',
      severity: 'error',
      comment: 'The import leads nowhere.',
      from: {},
      // What the offline plugin makes when the page is built.
      to: { couldNotResolve: true, pathNot: '^virtual:' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.mjs'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'types'],
    },
  },
}
