import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { chromium, type Page } from 'playwright-core'
import { browserFlags, findBrowser } from '../../../scripts/browser.mjs'
import { pageScript } from './page-script.ts'

/** A server of one empty page with a script, at an address of this machine; the script runs in a worker as well. */
export async function serveScript(
  file: string,
): Promise<{ readonly address: string; readonly end: () => void }> {
  const script = await pageScript(file)
  const server: Server = createServer(({ url }, answer) => {
    const isScript = url === '/script.js'
    answer.writeHead(200, { 'content-type': isScript ? 'text/javascript' : 'text/html; charset=utf-8' })
    answer.end(
      isScript
        ? script
        : '<!doctype html><title>store</title><script type="module" src="/script.js"></script>',
    )
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const { port } = server.address() as AddressInfo
  return {
    address: `http://127.0.0.1:${port}/`,
    end: () => {
      server.closeAllConnections()
      server.close()
    },
  }
}

/** Starts the browser that the tests run in. */
export async function startBrowser(): Promise<Awaited<ReturnType<typeof chromium.launch>>> {
  const { path, env } = await findBrowser()
  return chromium.launch({
    executablePath: path,
    args: [...browserFlags],
    env: { ...(process.env as Record<string, string>), ...env },
  })
}

/** A function of the page's script, called with plain values. */
export const inPage = (page: Page, name: string, ...given: readonly unknown[]): Promise<unknown> =>
  page.evaluate(
    async ([called, values]) => {
      const { calls } = globalThis as unknown as {
        calls: Record<string, (...values: unknown[]) => Promise<unknown>>
      }
      return calls[called as string]!(...(values as unknown[]))
    },
    [name, given] as const,
  )
