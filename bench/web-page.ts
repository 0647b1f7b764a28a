import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { type Browser, chromium, type Page } from 'playwright-core'
import { browserFlags, findBrowser } from '../scripts/browser.mjs'

/** How much slower the processor of the page's main thread is made; its workers stay as fast as they are. */
export type Slowdown = 1 | 4

/** The page served on any free port, and a browser that opens it with nothing in its cache. */
export async function startWeb() {
  const start = fileURLToPath(new URL('../scripts/start.mjs', import.meta.url))
  const server = spawn(process.execPath, [start, '--port', '0'], { stdio: ['ignore', 'pipe', 'inherit'] })
  const address = await new Promise<string>((resolve, reject) => {
    let out = ''
    server.stdout.on('data', (data) => {
      out += data
      const found = /http:\/\/\S+/.exec(out)?.[0]
      if (found) resolve(found)
    })
    server.on('exit', (code) => reject(new Error(`The page ended with ${code} before it had an address.`)))
  })
  const found = await findBrowser()
  const env = { ...(process.env as Record<string, string>), ...found.env }
  const browser: Browser = await chromium.launch({
    executablePath: found.path,
    args: [...browserFlags],
    env,
  })
  const inFresh = async <T>(slowdown: Slowdown, work: (page: Page) => Promise<T>): Promise<T> => {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      reducedMotion: 'reduce',
      serviceWorkers: 'block',
    })
    context.setDefaultTimeout(60_000)
    // What loads this bench names functions by a helper that the page does not have.
    await context.addInitScript('globalThis.__name = (given) => given')
    try {
      const page = await context.newPage()
      const devtools = await context.newCDPSession(page)
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
      return await work(page)
    } finally {
      await context.close()
    }
  }
  const end = async () => {
    await browser.close()
    server.kill('SIGTERM')
  }
  return { address, version: browser.version(), inFresh, end }
}
