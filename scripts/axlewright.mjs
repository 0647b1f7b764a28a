// `npm run axlewright -- …` from a checkout: set up, bundle when the sources changed, run.
import { pathToFileURL } from 'node:url'
import { buildCommand } from './build-command.mjs'
import { setUp } from './set-up.mjs'

await setUp()
const command = await buildCommand()
// npm goes to the folder of the package; the files that were named lie where the person stands.
if (process.env.npm_lifecycle_event === 'axlewright' && process.env.INIT_CWD)
  process.chdir(process.env.INIT_CWD)
await import(pathToFileURL(command).href)
