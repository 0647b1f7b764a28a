// Builds the page when its sources changed since the last build, each build in a folder of its own.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { locked, root } from './set-up.mjs'

const pages = join(root, 'dist', 'web')
/** Builds that are kept: a server that is still running serves the one it started with. */
const keptBuilds = 4

const filesIn = (folder) =>
  existsSync(folder)
    ? readdirSync(folder, { withFileTypes: true, recursive: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name))
        .filter((file) => !file.includes(join('src', 'cli')))
        .sort()
    : []

function hashOfSources() {
  const hash = createHash('sha256')
  const files = [
    join(root, 'vite.config.ts'),
    join(root, 'package-lock.json'),
    ...filesIn(join(root, 'src')),
    ...filesIn(join(root, 'examples')),
  ]
  for (const file of files) hash.update(file.slice(root.length)).update('\0').update(readFileSync(file))
  return hash.digest('hex')
}

/**
 * Where the page built from the present sources lies; built first when it is not there yet. A build that fails
 * leaves nothing behind and throws.
 */
export function buildPage() {
  const page = join(pages, hashOfSources().slice(0, 16))
  const isBuilt = () => existsSync(join(page, 'index.html'))
  if (isBuilt()) return page
  mkdirSync(pages, { recursive: true })
  locked(join('dist', '.build-page.lock'), () => {
    if (isBuilt()) return
    console.error('Building the page (once after each change) …')
    const fresh = `${page}-${process.pid}`
    const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js')
    const run = spawnSync(
      process.execPath,
      [vite, 'build', '--logLevel', 'error', '--outDir', fresh, '--emptyOutDir'],
      { cwd: root, stdio: ['ignore', 2, 2], env: { ...process.env, NODE_ENV: 'production' } },
    )
    if (run.status !== 0) {
      rmSync(fresh, { recursive: true, force: true })
      throw new Error('The page could not be built; what went wrong stands above.')
    }
    removeOld()
    renameSync(fresh, page)
  })
  return page
}

function removeOld() {
  const builds = readdirSync(pages, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && /^[0-9a-f]{16}$/.test(entry.name))
    .map((entry) => join(pages, entry.name))
    .sort((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs)
  for (const old of builds.slice(keptBuilds - 1)) rmSync(old, { recursive: true, force: true })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(buildPage())
