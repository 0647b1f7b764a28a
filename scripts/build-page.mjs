// Builds the page into dist/web when its sources changed since the last build.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { locked, root } from './set-up.mjs'

/** Where the built page lies. */
export const pageFolder = join(root, 'dist', 'web')
const stamp = join(root, 'dist', '.axlewright-page')

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

/** Builds when needed; a build that fails leaves the last good page where it is and throws. */
export function buildPage() {
  const hash = hashOfSources()
  const isCurrent = () =>
    existsSync(join(pageFolder, 'index.html')) && existsSync(stamp) && readFileSync(stamp, 'utf8') === hash
  if (isCurrent()) return
  mkdirSync(join(root, 'dist'), { recursive: true })
  locked(join('dist', '.build-page.lock'), () => {
    if (isCurrent()) return
    console.error('Building the page (once after each change) …')
    const fresh = `${pageFolder}-${process.pid}`
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
    rmSync(pageFolder, { recursive: true, force: true })
    renameSync(fresh, pageFolder)
    writeFileSync(stamp, hash)
  })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) buildPage()
