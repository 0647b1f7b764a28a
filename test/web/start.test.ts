import { spawnSync } from 'node:child_process'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { endServer, serve, servePage } from './support/served-page.ts'

const start = join(import.meta.dirname, '..', '..', 'scripts', 'start.mjs')
const answers = (address: string) =>
  fetch(address).then(
    ({ status }) => status,
    () => null,
  )

async function closes(address: string): Promise<boolean> {
  for (let i = 0; i < 50; i++) {
    if ((await answers(address)) === null) return true
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
  return false
}

describe('npm start', () => {
  test('WE1 prints exactly one address, serves the page there to this machine, and nothing else', async () => {
    const page = await servePage()
    try {
      expect(page.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/)
      const answer = await fetch(page.address)
      expect(answer.status).toBe(200)
      expect(await answer.text()).toContain('<title>Axlewright</title>')
      expect(answer.headers.get('content-security-policy')).toContain("default-src 'self'")
      expect(await answers(`${page.address}no-such-page`)).toBe(404)
      expect(await answers(`${page.address}../package.json`)).toBe(404)
      expect(page.printed().trim().split('\n')).toHaveLength(1)
    } finally {
      await endServer(page)
    }
  })

  test.each(['SIGTERM', 'SIGINT'] as const)('WE2 %s ends it with 0', async (signal) => {
    const page = await servePage()
    page.process.kill(signal)
    expect(await page.ended).toBe(0)
    expect(await answers(page.address)).toBeNull()
  })

  test('WE2 SIGTERM to npm ends the server behind it', async () => {
    const page = await serve('npm', ['start'], { PORT: '0' })
    expect(await answers(page.address)).toBe(200)
    page.process.kill('SIGTERM')
    await page.ended
    expect(await closes(page.address)).toBe(true)
  })

  test('WE3 a port that is asked for and taken is refused with a sentence; the usual one gives way', async () => {
    const other = createServer()
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve))
    const { port } = other.address() as AddressInfo
    const run = spawnSync(process.execPath, [start, '--port', String(port)], { encoding: 'utf8' })
    other.close()
    expect(run.status).toBe(2)
    expect(run.stdout).toBe('')
    expect(run.stderr).toContain(`Port ${port} cannot be used`)
    const [one, two] = [
      await serve(process.execPath, [start], { PORT: '' }),
      await serve(process.execPath, [start], { PORT: '' }),
    ]
    expect(one.address).not.toBe(two.address)
    await Promise.all([endServer(one), endServer(two)])
  })

  test.each(['12x', '-1', '70000', '1.5'])('WE3 "%s" is no port', (text) => {
    const run = spawnSync(process.execPath, [start, `--port=${text}`], { encoding: 'utf8' })
    expect(run.status).toBe(2)
    expect(run.stderr).toContain('is not a port')
  })
})
