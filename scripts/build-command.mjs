// Bundles the command into dist/axlewright.mjs, so that it starts fast and needs no sources once installed.
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { locked, root } from './set-up.mjs'

const target = join(root, 'dist', 'axlewright.mjs')
const stamp = join(root, 'dist', '.axlewright-command')

const sources = (folder) =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.(ts|json)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => !file.includes(`${join('src', 'web')}`))
    .sort()

function hashOfSources() {
  const hash = createHash('sha256')
  for (const file of ['package.json', 'scripts/build-command.mjs'])
    hash.update(readFileSync(join(root, file)))
  for (const file of sources(join(root, 'src'))) hash.update(file).update(readFileSync(file))
  return hash.digest('hex')
}

/** Builds when the sources changed since the last build; returns the path of the bundle. */
export async function buildCommand() {
  const hash = hashOfSources()
  const isCurrent = () => existsSync(target) && existsSync(stamp) && readFileSync(stamp, 'utf8') === hash
  if (isCurrent()) return target
  const { buildSync } = await import('esbuild')
  locked('.build-command.lock', () => {
    if (isCurrent()) return
    mkdirSync(join(root, 'dist'), { recursive: true })
    buildSync({
      entryPoints: [join(root, 'src', 'cli', 'index.ts')],
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      // Loaded when a PDF is asked for, with its font beside it: it is large, and reads its own files.
      external: ['pdfmake'],
      outfile: target,
      logLevel: 'error',
      banner: {
        js: "#!/usr/bin/env node\nimport { createRequire as axlewrightRequire } from 'node:module'; const require = axlewrightRequire(import.meta.url);",
      },
    })
    writeFileSync(stamp, hash)
  })
  return target
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await buildCommand()
