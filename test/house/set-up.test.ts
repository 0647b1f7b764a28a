import { spawn } from 'node:child_process'
import {
  appendFileSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'

// The set-up runs in a house of its own. In place of the package manager stands a program that does as that one
// does when it is ended: it does not go at once, and goes on writing until it is through.
const house = mkdtempSync(join(tmpdir(), 'set up '))
afterAll(() => rmSync(house, { recursive: true, force: true }))
const diary = join(house, 'diary')
const installer = join(house, 'installer.mjs')
mkdirSync(join(house, 'scripts'))
copyFileSync('scripts/set-up.mjs', join(house, 'scripts', 'set-up.mjs'))
writeFileSync(join(house, 'package.json'), '{}')
writeFileSync(
  installer,
  `import { appendFileSync, mkdirSync } from 'node:fs'
process.on('SIGTERM', () => {})
appendFileSync(${JSON.stringify(diary)}, 'begin ')
setTimeout(() => {
  appendFileSync(${JSON.stringify(diary)}, 'end ')
  process.exit(0)
}, 1500)
`,
)

const run = (program = 'set-up.mjs') => {
  const child = spawn(process.execPath, [join(house, 'scripts', program)], {
    env: { ...process.env, npm_execpath: installer },
    stdio: 'ignore',
    detached: true,
  })
  return { child, ended: new Promise<number | null>((resolve) => child.once('exit', resolve)) }
}
const written = () => (existsSync(diary) ? readFileSync(diary, 'utf8') : '')

test('a set-up that was ended half-way is waited for, by two at once, and one of them does it again', async () => {
  const first = run()
  while (!written().includes('begin')) await new Promise((resolve) => setTimeout(resolve, 20))
  process.kill(-first.child.pid!, 'SIGTERM')
  await first.ended
  const others = [run(), run()]
  expect(await Promise.all(others.map(({ ended }) => ended))).toEqual([0, 0])
  expect(written()).toBe('begin end begin end ')
  expect(existsSync(join(house, '.set-up.lock'))).toBe(false)
})

test('a lock left by dead processes is taken over by one at a time', async () => {
  const inside = join(house, 'inside')
  writeFileSync(
    join(house, 'scripts', 'hold.mjs'),
    `import { closeSync, openSync, rmSync } from 'node:fs'
import { locked } from './set-up.mjs'
locked('.some.lock', () => {
  closeSync(openSync(${JSON.stringify(inside)}, 'wx'))
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 50)
  rmSync(${JSON.stringify(inside)})
})
`,
  )
  const dead = run('set-up.mjs')
  await dead.ended
  appendFileSync(join(house, '.some.lock'), `${dead.child.pid}`)
  const all = Array.from({ length: 6 }, () => run('hold.mjs').ended)
  expect(await Promise.all(all)).toEqual([0, 0, 0, 0, 0, 0])
})
