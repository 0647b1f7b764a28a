import { type ChildProcess, spawn } from 'node:child_process'
import { type Browser, chromium, type Page } from 'playwright-core'
import { browserFlags, findBrowser } from '../../../scripts/browser.mjs'

/** A browser as a process of our own, so that it can be killed. */
export interface OwnBrowser {
  readonly browser: Browser
  readonly page: (address: string) => Promise<Page>
  /** Kills all of it, as the system would: nothing of it runs on. */
  readonly kill: () => Promise<void>
  /** Kills the processes of its pages alone. */
  readonly killPages: () => Promise<void>
}

/** Starts it on a profile, that of an earlier one or a new one. */
export async function ownBrowser(profile: string): Promise<OwnBrowser> {
  const { path, env } = await findBrowser()
  const child = spawn(
    path,
    [...browserFlags, '--headless', `--user-data-dir=${profile}`, '--remote-debugging-port=0', 'about:blank'],
    { env: { ...process.env, ...env }, stdio: ['ignore', 'ignore', 'pipe'], detached: true },
  )
  const ended = new Promise<void>((resolve) => child.on('close', () => resolve()))
  const browser = await chromium.connectOverCDP(await addressOf(child))
  const kill = async () => {
    process.kill(-child.pid!, 'SIGKILL')
    await ended
    await browser.close().catch(() => undefined)
  }
  return {
    browser,
    kill,
    page: async (address) => {
      // A page that gets a process which is just being killed crashes at once: then another one is opened.
      for (let left = 10; ; left--)
        try {
          const page = await browser.contexts()[0]!.newPage()
          await page.goto(address)
          return page
        } catch (error) {
          if (left === 0 || !/crashed|closed/i.test(String(error))) throw error
        }
    },
    killPages: async () => {
      const cdp = await browser.newBrowserCDPSession()
      const { processInfo } = await cdp.send('SystemInfo.getProcessInfo')
      for (const { type, id } of processInfo) if (type === 'renderer') process.kill(id, 'SIGKILL')
      await cdp.detach()
    },
  }
}

function addressOf(child: ChildProcess): Promise<string> {
  let said = ''
  return new Promise((resolve, reject) => {
    child.stderr!.on('data', (piece: Buffer) => {
      said += piece
      const [, address] = /DevTools listening on (ws:\S+)/.exec(said) ?? []
      if (address) resolve(address)
    })
    child.on('close', (code) =>
      reject(new Error(`The browser ended with ${code} before it could be asked: ${said}`)),
    )
  })
}
