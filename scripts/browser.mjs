// Finds a Chromium for the browser tests, by really starting each candidate.
import { spawnSync } from 'node:child_process'
import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { delimiter, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { pathToFileURL } from 'node:url'
import { createBrotliDecompress } from 'node:zlib'
import { root } from './set-up.mjs'

/** What every start of the browser gets. */
export const browserFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

const cacheFile = join(root, 'node_modules', '.axlewright-browser.json')
const packedFolder = join(root, 'node_modules', '.axlewright-chromium')

/** Starts it and has it draw a page: a browser that merely answers --version may still lack a library. */
async function starts({ path, env }) {
  const { chromium } = await import('playwright-core')
  let browser
  try {
    browser = await chromium.launch({
      executablePath: path,
      args: browserFlags,
      env: { ...process.env, ...env },
      timeout: 30_000,
    })
    const page = await browser.newPage()
    await page.setContent('<title>probe</title><p>probe')
    return (await page.title()) === 'probe' && (await page.screenshot()).length > 0
  } catch {
    return false
  } finally {
    await browser?.close().catch(() => {})
  }
}

function onPath() {
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']
  return (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)))
    .filter((file) => existsSync(file))
}

const unbrotli = async (from, to) => {
  const half = `${to}.${process.pid}`
  await pipeline(createReadStream(from), createBrotliDecompress(), createWriteStream(half, { mode: 0o755 }))
  renameSync(half, to)
}

/** The packed browser, unpacked once under a temporary name and then renamed. */
async function packed() {
  if (process.platform !== 'linux' || process.arch !== 'x64') return null
  const bin = join(root, 'node_modules', '@sparticuz', 'chromium', 'bin')
  if (!existsSync(join(bin, 'chromium.br'))) return null
  mkdirSync(packedFolder, { recursive: true })
  const path = join(packedFolder, 'chromium')
  if (!existsSync(path)) await unbrotli(join(bin, 'chromium.br'), path)
  const libraries = join(packedFolder, 'al2023')
  for (const [tar, folder] of [
    ['al2023.tar.br', libraries],
    ['swiftshader.tar.br', packedFolder],
  ]) {
    const done = join(packedFolder, `${tar}.done`)
    if (existsSync(done) || !existsSync(join(bin, tar))) continue
    const plain = join(packedFolder, tar.replace('.br', ''))
    await unbrotli(join(bin, tar), plain)
    mkdirSync(folder, { recursive: true })
    if (spawnSync('tar', ['-xf', plain, '-C', folder], { stdio: 'ignore' }).status !== 0) return null
    rmSync(plain, { force: true })
    writeFileSync(done, '')
  }
  const places = [join(libraries, 'lib'), join(libraries, 'al2023', 'lib'), libraries].filter((place) =>
    existsSync(place),
  )
  return { path, libraryPath: [...places, process.env.LD_LIBRARY_PATH ?? ''].filter(Boolean).join(':') }
}

function installed() {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return null
  console.error("No browser started; asking Debian's package manager for chromium (once) …")
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  spawnSync('apt-get', ['update', '-qq'], { stdio: ['ignore', 'ignore', 2], env, timeout: 180_000 })
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
    stdio: ['ignore', 'ignore', 2],
    env,
    timeout: 600_000,
  })
  return onPath()[0] ?? null
}

async function search() {
  const asked = process.env.AXLEWRIGHT_BROWSER
  if (asked) {
    const candidate = { path: asked, env: {} }
    if (await starts(candidate)) return candidate
    throw new Error(
      `AXLEWRIGHT_BROWSER names ${asked}, and that does not start. Point it at a Chromium, or unset it to let the tests find one.`,
    )
  }
  for (const path of onPath()) if (await starts({ path, env: {} })) return { path, env: {} }
  const own = await packed()
  if (own) {
    if (await starts({ path: own.path, env: {} })) return { path: own.path, env: {} }
    const env = { LD_LIBRARY_PATH: own.libraryPath }
    if (await starts({ path: own.path, env })) return { path: own.path, env }
  }
  const system = installed()
  if (system && (await starts({ path: system, env: {} }))) return { path: system, env: {} }
  throw new Error(
    'The browser tests need a Chromium that starts. Install one (on Debian: apt-get install chromium) or name it in AXLEWRIGHT_BROWSER, then run the tests again.',
  )
}

/**
 * A browser that really starts: the one named in AXLEWRIGHT_BROWSER, one on PATH, the packed one, or one from
 * the system's package manager. Found once; the answer is kept in node_modules.
 */
export async function findBrowser() {
  const asked = process.env.AXLEWRIGHT_BROWSER ?? ''
  if (existsSync(cacheFile)) {
    const known = JSON.parse(readFileSync(cacheFile, 'utf8'))
    if (known.asked === asked && existsSync(known.path)) return known
  }
  const found = await search()
  const known = { asked, ...found }
  writeFileSync(`${cacheFile}.${process.pid}`, JSON.stringify(known))
  renameSync(`${cacheFile}.${process.pid}`, cacheFile)
  return known
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { path } = await findBrowser()
  console.log(path)
}
