import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { browserFlags, findBrowser } from '../../../scripts/browser.mjs'
import { endServer, servePage } from './served-page.ts'

/** The machine may be busy with other tests. */
export const patient = { timeout: 20_000 }
export const desktop = { width: 1440, height: 900 }
export const phone = { width: 390, height: 844 }
/** Phone, tablet, desktop: the sizes that every screen is looked at in. */
export const sizes = [
  ['phone', 390, 844],
  ['tablet', 820, 1180],
  ['desktop', 1440, 900],
] as const
/** Day, night and sun glare, as the device asks for them. */
export const looks = [
  ['day', { colorScheme: 'light' }],
  ['night', { colorScheme: 'dark' }],
  ['glare', { colorScheme: 'light', contrast: 'more' }],
] as const

interface Opened {
  readonly page: Page
  readonly context: BrowserContext
  /** What the browser complained about, and every address that was asked. */
  readonly complaints: string[]
  readonly asked: string[]
}

/** The served page and a browser: opens the page as often as is asked for, and ends both. */
export async function startPages() {
  const found = await findBrowser()
  const env = { ...(process.env as Record<string, string>), ...found.env }
  const [served, browser] = await Promise.all([
    servePage(),
    chromium.launch({ executablePath: found.path, args: [...browserFlags], env }),
  ])
  const open = async (
    options: Parameters<Browser['newContext']>[0] = { viewport: desktop },
    at = '',
    /** What must be seen before the page counts as open. */
    shows = '.reading:visible',
  ): Promise<Opened> => {
    const context = await browser.newContext({ reducedMotion: 'reduce', ...options })
    context.setDefaultTimeout(patient.timeout)
    const page = await context.newPage()
    const complaints: string[] = []
    const asked: string[] = []
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) complaints.push(message.text())
    })
    page.on('pageerror', (error) => complaints.push(error.message))
    context.on('request', (request) => asked.push(request.url()))
    await page.goto(served.address + at)
    await page.locator(shows).first().waitFor()
    await page.evaluate(() => document.fonts.ready)
    return { page, context, complaints, asked }
  }
  const close = async () => {
    await browser.close()
    await endServer(served)
  }
  return { address: served.address, open, close }
}
