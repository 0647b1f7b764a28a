// `npm run axlewright -- …` from a checkout: set up, bundle when the sources changed, run.
import { pathToFileURL } from 'node:url'
import { buildCommand } from './build-command.mjs'
import { setUp } from './set-up.mjs'

await setUp()
await import(pathToFileURL(await buildCommand()).href)
