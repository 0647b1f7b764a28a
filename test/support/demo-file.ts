import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const examples = fileURLToPath(new URL('../../examples/', import.meta.url))

/** A file of the demo as JSON, by its place in `examples`. */
export const demoFile = (path: string): unknown => JSON.parse(readFileSync(examples + path, 'utf8'))
