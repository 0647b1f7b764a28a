// One set-up for `npm start`, `npm test` and `npm run axlewright`: packages and a browser that really starts.
// Plain JavaScript without dependencies, since it runs before there are any.
import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  appendFileSync,
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
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
  if (!(pid > 0)) return false
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

/** Removes a lock whose processes are all dead; one at a time, so that nobody removes the lock of the next. */
function takeOver(file, seen) {
  const claim = `${file}.taking`
  try {
    closeSync(openSync(claim, 'wx'))
  } catch {
    if (existsSync(claim) && Date.now() - statSync(claim).mtimeMs > 5000) rmSync(claim, { force: true })
    return
  }
  try {
    if (existsSync(file) && readFileSync(file, 'utf8') === seen) rmSync(file, { force: true })
  } finally {
    rmSync(claim, { force: true })
  }
}

/** Waits for the lock, then holds it. A lock left behind is taken over once every process named in it is dead. */
function acquire(file) {
  for (let waited = 0; ; waited++) {
    try {
      const handle = openSync(file, 'wx')
      writeSync(handle, String(process.pid))
      closeSync(handle)
      return
    } catch (error) {
      if (error.code !== 'EEXIST') throw error
      let seen = ''
      try {
        seen = readFileSync(file, 'utf8')
      } catch {
        // It was released between the two calls.
      }
      if (seen && !seen.split(' ').map(Number).some(isAlive)) takeOver(file, seen)
      else {
        if (waited === 20)
          console.error(
            `Waiting for another set-up (process ${seen || 'unknown'}) to finish … If none is running, delete ${file}.`,
          )
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100)
      }
    }
  }
}

/** Holds the lock while `work` runs. */
export function locked(name, work) {
  const file = join(root, name)
  acquire(file)
  try {
    return work()
  } finally {
    rmSync(file, { force: true })
  }
}

/** Runs the package manager; its process stands in the lock too, because it outlives us when we are ended. */
function install(lock) {
  const env = Object.fromEntries(
    Object.entries(process.env).filter(
      ([key]) => !/^npm_(lifecycle|package|command)/i.test(key) && key !== 'NODE_ENV',
    ),
  )
  const npm = process.env.npm_execpath
  const args = ['ci', '--loglevel=error', '--no-audit', '--no-fund']
  const options = { cwd: root, env, stdio: ['ignore', 2, 2] }
  const child = npm
    ? spawn(process.execPath, [npm, ...args], options)
    : spawn('npm', args, { ...options, shell: process.platform === 'win32' })
  if (child.pid) appendFileSync(lock, ` ${child.pid}`)
  return new Promise((resolve) => {
    child.once('error', () => resolve(false))
    child.once('exit', (code) => resolve(code === 0))
  })
}

/** Installs the packages of the lock file when it, the manifest or Node changed since the last time. */
export async function setUp() {
  if (isCurrent()) return
  const lock = join(root, '.set-up.lock')
  acquire(lock)
  let installed = true
  try {
    if (isCurrent()) return
    console.error('Setting up: installing the packages of the lock file (once) …')
    installed = await install(lock)
    if (installed) {
      mkdirSync(dirname(stampFile), { recursive: true })
      writeFileSync(stampFile, wanted())
    }
  } finally {
    rmSync(lock, { force: true })
  }
  if (installed) return
  console.error(
    'The packages could not be installed. Check the network or the disk, then run the same command again; nothing else was changed.',
  )
  process.exit(2)
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await setUp()
