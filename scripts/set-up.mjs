// One set-up for `npm start`, `npm test` and `npm run axlewright`: packages and a browser that really starts.
// Plain JavaScript without dependencies, since it runs before there are any.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readFileSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

export const root = dirname(dirname(fileURLToPath(import.meta.url)))
const stampFile = join(root, 'node_modules', '.axlewright-set-up')

const [major, minor] = process.versions.node.split('.').map(Number)
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(
    `Axlewright needs Node 20.19 or newer; this is ${process.versions.node}. Install a newer Node and run the command again.`,
  )
  process.exit(2)
}

const wanted = () =>
  createHash('sha256')
    .update(readFileSync(join(root, 'package.json')))
    .update(existsSync(join(root, 'package-lock.json')) ? readFileSync(join(root, 'package-lock.json')) : '')
    .update(process.version)
    .digest('hex')

const isCurrent = () => existsSync(stampFile) && readFileSync(stampFile, 'utf8') === wanted()

const isAlive = (pid) => {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

/** Holds the set-up lock while `work` runs; a lock left by a dead process is taken over. */
export function locked(name, work) {
  const file = join(root, name)
  for (let waited = 0; ; waited++) {
    try {
      const handle = openSync(file, 'wx')
      writeSync(handle, String(process.pid))
      closeSync(handle)
      break
    } catch (error) {
      if (error.code !== 'EEXIST') throw error
      let holder = 0
      try {
        holder = Number(readFileSync(file, 'utf8'))
      } catch {
        // It was released between the two calls.
      }
      if (holder && !isAlive(holder)) rmSync(file, { force: true })
      else {
        if (waited === 20) console.error('Waiting for another set-up to finish …')
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100)
      }
    }
  }
  try {
    return work()
  } finally {
    rmSync(file, { force: true })
  }
}

/** Installs the packages of the lock file when it, the manifest or Node changed since the last time. */
export function setUp() {
  if (isCurrent()) return
  locked('.set-up.lock', () => {
    if (isCurrent()) return
    console.error('Setting up: installing the packages of the lock file (once) …')
    const env = Object.fromEntries(
      Object.entries(process.env).filter(
        ([key]) => !/^npm_(lifecycle|package|command)/i.test(key) && key !== 'NODE_ENV',
      ),
    )
    const npm = process.env.npm_execpath
    const args = ['ci', '--loglevel=error', '--no-audit', '--no-fund']
    const run = npm
      ? spawnSync(process.execPath, [npm, ...args], { cwd: root, env, stdio: ['ignore', 2, 2] })
      : spawnSync('npm', args, {
          cwd: root,
          env,
          stdio: ['ignore', 2, 2],
          shell: process.platform === 'win32',
        })
    if (run.status !== 0) {
      console.error(
        'The packages could not be installed. Check the network or the disk, then run the same command again; nothing else was changed.',
      )
      process.exit(2)
    }
    mkdirSync(dirname(stampFile), { recursive: true })
    writeFileSync(stampFile, wanted())
  })
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) setUp()
