import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { browserFlags, findBrowser } from '../../scripts/browser.mjs'
import { buildCommand } from '../../scripts/build-command.mjs'
import { startingLayouts } from '../../src/corner/index.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'axlewright-plan-'))
const van = 'examples/port-unit-12/port-unit-12.job.json'
const bus = 'examples/port-unit-07/port-unit-07.job.json'
const file = (name: string) => join(folder, name)
afterAll(() => rmSync(folder, { recursive: true }))

/** The real command in a process of its own. */
function axlewright(...words: string[]) {
  const run = spawnSync(process.execPath, ['scripts/axlewright.mjs', ...words], {
    cwd: root,
    encoding: 'utf8',
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}
const plan = (...words: string[]) => axlewright('plan', van, '--search', 'quick', ...words)

/** What the van's plan is, once. */
const whole = plan()
const ids = plan('--ids')
  .out.split('\n')
  .flatMap((line) => /^(?!#)(.+?) {2}#/.exec(line)?.[1] ?? [])

describe('axlewright plan', () => {
  test('CM10 shopping stands before the first band, consequences behind the last, a line has its facts', () => {
    const { out, code, err } = whole
    expect([err, code]).toEqual(['', 0])
    const at = (text: string) => out.indexOf(text)
    expect(out).not.toMatch(/rule is broken|breaks? a rule/)
    expect(at('Before anything is undone')).toBeGreaterThan(0)
    expect(at('□ Used once: fastener of')).toBeLessThan(at('1  On its wheels'))
    expect(at('What follows from it')).toBeGreaterThan(at('Hand the vehicle over'))
    expect(out).toMatch(/^ +\d+ □ A +Undo .* · 18 mm spanner · under · 2 min$/m)
    expect(out).toMatch(/socket · 70 N·m, then 90°, at ride height · under · /)
    expect(out).toMatch(/Never get under a vehicle that a jack alone carries/)
    for (const line of out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(100)
  })
  test('CM10 cautions stand at their line', () => {
    expect(whole.out).toMatch(
      /Part the taper of[^\n]*nut still on\n[^\n]*\n +! Nut on a few threads until the taper/,
    )
  })
  test('CM10 --why tells why a line is there and what it waits for', () => {
    expect(whole.out).not.toContain('Why: ')
    expect(plan('--why').out).toMatch(/ {9}Why: .*\n( {9}.*\n)* {9}After \d+, /)
  })
  test('CM2 --json is the sheet and nothing else', () => {
    const sheet = JSON.parse(plan('--json').out)
    expect(sheet.goal).toEqual(['front right lower arm', 'front right tie rod'])
    expect(sheet.bands.length).toBeGreaterThan(2)
  })
  test('CM10 --plain stays within Latin-1 and loses nothing', () => {
    const { out } = plan('--plain')
    expect([...out].filter((c) => c.codePointAt(0)! > 0xff)).toEqual([])
    expect(out.replace(/^\? /gm, '')).not.toContain('?')
    expect(out).toMatch(/ 1 \[ \] /)
  })
  test('CM10 a part may be named as it is called; one that stands twice needs its side', () => {
    expect(plan('--replace', 'Front left Strut').out).toMatch(/^Plan: front left strut$/m)
    const { code, err, out } = plan('--replace', 'strut', 'flux arm', 'flux')
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(/no part “strut” .* Did you mean “front left strut”, “front right strut”\?/)
    expect(err).toMatch(/no part “flux arm” .* Did you mean “front left lower-arm”/)
    expect(err).toMatch(/no part “flux” .* Known are “front sub-frame”, /)
    expect(plan('--open', 'front right tie-rod-end').out).toMatch(/^Plan: front right tie rod end$/m)
  })
  test('CM10 choices are told where nothing is to be replaced, and wrong words are', () => {
    const job = JSON.parse(readFileSync(join(root, van), 'utf8'))
    const bare = file('bare.job.json')
    writeFileSync(bare, JSON.stringify({ ...job, entries: job.entries.slice(0, 1) }))
    for (const name of ['front.corner.json', 'rear.corner.json', 'port-unit-12.spec.json'])
      copyFileSync(join(root, 'examples/port-unit-12', name), file(name))
    copyFileSync(join(root, 'examples/port-kit.kit.json'), file('port-kit.kit.json'))
    const { code, err } = axlewright('plan', bare)
    expect(code).toBe(2)
    expect(err).toMatch(
      /names no part .*\nName it with --replace ID\. What wears here: “front left lower-arm”/,
    )
    const wrong = plan('--support', 'rope', '--search', 'never')
    expect([wrong.code, wrong.err.trim().split('\n').length]).toEqual([2, 2])
  })
  test('CM10 stands instead of the lift', () => {
    expect(plan('--support', 'stands').out).toMatch(/on stands/i)
    expect(whole.out).not.toMatch(/^\d+ {2}.*stands/m)
  })
})

describe('axlewright plan --failed', () => {
  const failed = (...words: string[]) => plan('--failed', ...words)
  test('CM12 what went wrong is told, planned, and had before lifting', () => {
    const { out, code } = failed(
      'front right tie-rod-end: taper will not part, press',
      'front left wheel-nuts: snapped stud',
    )
    expect(code).toBe(0)
    expect(out).toMatch(/^What failed$/m)
    expect(out).toMatch(/^Taper will not part: front right tie rod end \(tried in vain: the separator/m)
    expect(out).toMatch(/ □ \S* +Drive a fork/)
    expect(out).toMatch(/^□ Parts: wheel stud of the front left wheel nuts$/m)
    expect(out).toMatch(/^□ The kit has no fork/m)
  })
  test('CM12 --json has the branches', () => {
    const sheet = JSON.parse(failed('front left lower-front-bolt: rounded head', '--json').out)
    expect(sheet.branches).toHaveLength(1)
    expect(sheet.branches[0].because).toBe('rounded head: front left lower front pivot bolt')
  })
  test('CM12 what is not understood is told at once; what cannot be so is refused', () => {
    const { code, err, out } = failed(
      'front left strut',
      'nowhere: rounded head',
      'front left wheel-nuts: rounded head, dynamite',
    )
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(
      /“front left strut”: write a joint or a part, a colon and what went wrong: seized sleeve, /,
    )
    expect(err).toMatch(/no joint “nowhere”/)
    expect(err).toMatch(/“dynamite” is no way that could have been tried\. Known are soak, /)
    const cannot = failed('front left wheel-nuts: taper will not part')
    expect([cannot.code, cannot.out]).toEqual([2, ''])
    expect(cannot.err).toMatch(/cannot be at the front left wheel nuts: it has no taper/)
  })
})

describe('axlewright plan, from the record', () => {
  const half = file('half.job.json')
  const job = JSON.parse(readFileSync(join(root, van), 'utf8'))
  const wheel = 'front right'
  const rows = [
    ['undone', { joint: 'wheel-nuts', wheel, to: 'cracked' }],
    ['carried', { axle: 'front', by: 'stands', seen: true }],
    ['placed', { part: 'wheel', wheel, where: 'off' }],
  ] as const
  const opened = job.entries.filter(({ kind }: { kind: string }) => kind === 'opened')
  const entries = [...opened, ...rows.map(([kind, data]) => ({ kind, data }))]
  writeFileSync(half, JSON.stringify({ ...job, entries }))
  const models = ['front.corner', 'rear.corner', 'port-unit-12.spec'].map(
    (name) => `examples/port-unit-12/${name}.json`,
  )
  const from = (...words: string[]) =>
    axlewright('plan', half, '--search', 'quick', ...words, '--with', ...models, 'examples/port-kit.kit.json')
  test('CM14 what is done is left out and counted; afresh it is not', () => {
    const on = from('--replace', 'front right lower-arm')
    expect(on.err).toBe('')
    expect(on.out).toMatch(/^\d+ actions are done by the record, \d+ are left\.$/m)
    expect(on.out).not.toMatch(/Jack the front axle up/)
    const afresh = from('--replace', 'front right lower-arm', '--afresh')
    expect(afresh.out).not.toMatch(/done by the record/)
    expect(afresh.out).toMatch(/Jack the front axle up|lift until the wheels are free/)
  })
  test('CM14 making safe ends with a tag; what goes with it neither is told', () => {
    const stand = from('--make-safe', 'stand')
    expect(stand.out).toMatch(/^Plan: make it safe to stand$/m)
    expect(stand.out).toMatch(/Hang a tag on the steering wheel: not to be moved/)
    expect(from('--make-safe', 'roll').out).toMatch(/at yard pace only/)
    for (const words of [
      ['--make-safe', 'fly'],
      ['--make-safe', 'stand', '--afresh'],
    ]) {
      const { code, out, err } = from(...words)
      expect([code, out]).toEqual([2, ''])
      expect(err).toMatch(/Say “stand” or “roll”|leave the others out/)
    }
  })
})

describe('axlewright plan --judge', () => {
  const judge = (name: string, text: string) => {
    writeFileSync(file(name), text)
    return plan('--judge', file(name))
  }
  test('CM10 its own order is in order, in each form', () => {
    expect(ids.length).toBeGreaterThan(40)
    for (const [name, text] of [
      ['a.txt', plan('--ids').out],
      ['b.json', JSON.stringify(ids)],
      ['c.json', plan('--json').out],
      ['d.txt', `\uFEFF${ids.join('\r\n')}`],
    ] as const) {
      const { code, out, err } = judge(name, text)
      expect([code, err], name).toEqual([0, ''])
      expect(out).toMatch(/No rule is broken\. No longer than our own order/)
    }
  })
  test('CM10 a broken rule stands under its line, and it ends with 1', () => {
    const nuts = 'crack front right wheel-nuts'
    const order = ids.filter((id) => id !== nuts)
    order.splice(order.indexOf('open front right wheel-nuts'), 0, nuts)
    const { code, out, err } = judge('lifted.txt', order.join('\n'))
    expect([code, err]).toEqual([1, ''])
    expect(out).toMatch(/✕ +Crack the front right wheel nuts[^\n]*\n +✕ I2: ./)
    expect(out).toMatch(/line(s)? breaks? a rule/)
  })
  test('CM10 what is left out or unknown is told, and it ends with 1', () => {
    const { code, out } = judge('less.txt', ['sing', ...ids.slice(1)].join('\n'))
    expect(code).toBe(1)
    expect(out).toMatch(/no action\s+“sing”/)
    expect(out).toMatch(/The order leaves out “/)
  })
  test('CM3 an order that is none is told', () => {
    expect(judge('e.json', '{"bands": 3}').err).toMatch(
      /e\.json: This is no order of actions\. Write one id a line/,
    )
    expect(judge('f.txt', '# nothing\n').err).toMatch(/There is no action in it/)
    expect(judge('g.json', '["a",').err).toMatch(/g\.json, line 1/)
    expect(plan('--judge', file('none.txt')).err).toMatch(/There is no such file/)
    expect(plan('--judge', file('none.txt')).code).toBe(2)
  })
})

describe('the card', () => {
  let browser: Browser
  beforeAll(async () => {
    const found = await findBrowser()
    const env = { ...(process.env as Record<string, string>), ...found.env }
    browser = await chromium.launch({ executablePath: found.path, args: [...browserFlags], env })
  })
  afterAll(() => browser.close())

  test.each([van, bus])(
    'CM5 CM10 %s: one ink, no address, a box for each action, nothing cut off',
    async (job) => {
      const card = file('card.html')
      const run = axlewright('plan', job, '--search', 'quick', '--html', card)
      expect([run.code, run.err]).toEqual([0, ''])
      expect(run.out).toContain(card)
      const html = readFileSync(card, 'utf8')
      expect(html).not.toMatch(/https?:|src=|@import|url\(/)
      const page = await browser.newPage()
      const asked: string[] = []
      page.on('request', (request) => asked.push(request.url()))
      await page.goto(`file://${card}`)
      expect(asked.filter((url) => !url.startsWith('file:'))).toEqual([])
      const seen = await page.evaluate(() => ({
        inks: new Set([...document.querySelectorAll('body *')].map((one) => getComputedStyle(one).color))
          .size,
        rows: document.querySelectorAll('tbody tr').length,
        boxes: document.querySelectorAll('tbody .box').length,
        over: [...document.querySelectorAll('td')].filter((one) => one.scrollWidth > one.clientWidth + 1)
          .length,
        wide: document.documentElement.scrollWidth - innerWidth,
        text: document.body.textContent,
      }))
      expect(seen).toMatchObject({ inks: 1, over: 0 })
      expect(seen.wide).toBeLessThanOrEqual(0)
      expect(seen.rows).toBeGreaterThan(40)
      expect(seen.boxes).toBe(seen.rows)
      expect(seen.text).toMatch(/Never get under a vehicle/)
      expect(seen.text).toMatch(/second look by/i)
      for (const format of ['A4', 'Letter'])
        expect((await page.pdf({ format })).length, format).toBeGreaterThan(10_000)
      await page.close()
    },
  )
})

describe('axlewright layouts', () => {
  test('CM11 all are listed with what they are typical of', () => {
    const { out, code } = axlewright('layouts')
    expect(code).toBe(0)
    for (const { id, name } of startingLayouts) expect(out).toMatch(new RegExp(`^${id}\\n +${name}`, 'm'))
    expect(JSON.parse(axlewright('layouts', '--json').out)).toHaveLength(9)
  })
  test.each(startingLayouts.map(({ id }) => id))(
    'CM11 %s is written and read again, from the installed bundle',
    async (id) => {
      // The bundle by itself, with no sources beside it.
      const command = file('axlewright.mjs')
      copyFileSync(await buildCommand(), command)
      const run = (...words: string[]) =>
        spawnSync(process.execPath, [command, ...words], { cwd: folder, encoding: 'utf8' })
      const name = `${id}.corner.json`
      expect(run('layouts', id, name).stdout).toContain(name)
      const { status, stdout, stderr } = run('check', name)
      expect([status, stderr]).toEqual([0, ''])
      expect(stdout).toContain(name)
    },
  )
  test('CM11 a file that is there is left as it is, unless asked', () => {
    const kept = file('kept.corner.json')
    writeFileSync(kept, 'mine')
    const { code, err } = axlewright('layouts', 'strut-front', kept)
    expect(code).toBe(2)
    expect(err).toMatch(/is there already, and was left as it is\. Name another file, or say --overwrite/)
    expect(readFileSync(kept, 'utf8')).toBe('mine')
    expect(axlewright('layouts', 'strut-front', kept, '--overwrite').code).toBe(0)
    expect(JSON.parse(readFileSync(kept, 'utf8')).layout).toBe('strut')
  })
  test('CM11 an id that is none is told with those that are', () => {
    const { code, err } = axlewright('layouts', 'flux')
    expect(code).toBe(2)
    expect(err).toMatch(/no layout “flux”[\s\S]*strut-front/)
    expect(axlewright('layouts', 'strut-front', join(folder, 'no', 'such.json')).err).toMatch(
      /cannot be written \(ENOENT\)/,
    )
  })
})
