import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { findBrowser } from '../../scripts/browser.mjs'

const script = join(import.meta.dirname, '..', '..', 'scripts', 'browser.mjs')

test('a browser that is named and does not start is refused with what to do', () => {
  const run = spawnSync(process.execPath, [script], {
    encoding: 'utf8',
    env: { ...process.env, AXLEWRIGHT_BROWSER: process.execPath },
  })
  expect(run.status).not.toBe(0)
  expect(run.stdout).toBe('')
  expect(run.stderr).toContain('Point it at a Chromium, or unset it')
})

test('the browser that is found is there, and is found again without a search', async () => {
  const found = await findBrowser()
  expect(existsSync(found.path)).toBe(true)
  expect(await findBrowser()).toEqual(found)
})
