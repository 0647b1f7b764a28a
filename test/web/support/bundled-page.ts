import { fileURLToPath } from 'node:url'
import { type BuildOptions, build } from 'esbuild'
import { type Browser, chromium, type Page } from 'playwright-core'
import { browserFlags, findBrowser } from '../../../scripts/browser.mjs'

/** An empty page of a real browser that has one module of ours as `axlewright`. */
export interface BundledPage {
  readonly browser: Browser
  readonly page: Page
  /** The module as a script, for a worker. */
  readonly script: string
}

/** Bundles a module of `src/` and opens a page with it. */
export async function bundledPage(module: string, options: BuildOptions = {}): Promise<BundledPage> {
  const found = await findBrowser()
  const env = { ...(process.env as Record<string, string>), ...found.env }
  const browser = await chromium.launch({ executablePath: found.path, args: [...browserFlags], env })
  const page = await browser.newPage()
  const built = await build({
    entryPoints: [fileURLToPath(new URL(`../../../src/${module}`, import.meta.url))],
    bundle: true,
    write: false,
    format: 'iife',
    globalName: 'axlewright',
    ...options,
  })
  const script = built.outputFiles![0]!.text
  await page.addScriptTag({ content: script })
  return { browser, page, script }
}
