// `npm run bench`: set up, then time what the targets speak of, against its rivals, in one run.
import { setUp } from './set-up.mjs'

await setUp()
const { register } = await import('tsx/esm/api')
register()
const { bench } = await import('../bench/run.ts')
const { buildPage } = await import('./build-page.mjs')
process.exitCode = await bench({ page: buildPage })
