import { spawn, spawnSync } from 'node:child_process'
import {
  chmodSync,
  copyFileSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildCommand } from '../../scripts/build-command.mjs'
import type { Entry } from '../../src/job/index.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const top = mkdtempSync(join(tmpdir(), 'axlewright-record-'))
const examples = join(root, 'examples', 'port-unit-07')
let command: string

beforeAll(async () => {
  command = await buildCommand()
})
afterAll(() => rmSync(top, { recursive: true, force: true }))

/** The real command in a process of its own, on one of the devices. */
function on(device: string, words: readonly string[], input?: string) {
  const run = spawnSync(process.execPath, [command, ...words], {
    cwd: top,
    encoding: 'utf8',
    env: { ...process.env, AXLEWRIGHT_HOME: join(top, `home-${device}`) },
    ...(input === undefined ? {} : { input }),
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}
/** The same, which must be well. */
function well(device: string, ...words: string[]): string {
  const { code, out, err } = on(device, words)
  expect([code, err]).toEqual([0, ''])
  return out
}
const demo = JSON.parse(readFileSync(join(examples, 'port-unit-07.job.json'), 'utf8'))
function jobFile(name: string, entries: readonly Entry[]): string {
  writeFileSync(join(top, name), JSON.stringify({ ...demo, entries }))
  return name
}
const note = (text: string): Entry => ({ kind: 'note', data: { text } })
const logLines = (folder: string) =>
  readFileSync(join(top, folder, 'log.jsonl'), 'utf8')
    .split('\n')
    .slice(0, -1)

describe('CM15 from a job file to a proof, by two devices', () => {
  let paper: string
  let print: string
  let office: string
  let tablet: string

  test('a workshop is made; its root is shown once, with a check', () => {
    for (const file of ['front.corner.json', 'rear.corner.json', 'port-unit-07.spec.json'])
      copyFileSync(join(examples, file), join(top, file))
    copyFileSync(join(examples, '..', 'port-kit.kit.json'), join(top, 'port-kit.kit.json'))
    const out = well('office', 'workshop', 'make', demo.workshop, '--device', 'office')
    paper = out
      .split('\n')
      .filter((line) => /^ {4}([0-9a-f]{4} ?)+$/.test(line))
      .join(' ')
    print = /root (([0-9a-f]{5} ?){4})/.exec(out)![1]!
    expect(paper.match(/[0-9a-f]{4}/g)).toHaveLength(17)
    const secret = paper.replace(/\s/g, '').slice(0, 64)
    for (const file of readdirSync(join(top, 'home-office'), { recursive: true, encoding: 'utf8' })) {
      const path = join(top, 'home-office', file)
      if (statSync(path).isFile()) expect(readFileSync(path, 'utf8')).not.toContain(secret)
    }
    if (process.platform !== 'win32')
      expect(statSync(join(top, 'home-office', 'device.key')).mode & 0o777).toBe(0o600)
    expect(on('office', ['workshop', 'make', 'Again']).code).toBe(2)
  })

  test('a second device is certified, and joins by the fingerprint on the paper', () => {
    const keyOf = (device: string) => JSON.parse(well(device, 'workshop', 'list', '--json')).device as string
    office = keyOf('office')
    tablet = keyOf('tablet')
    expect(tablet).not.toBe(office)
    expect(on('tablet', ['workshop', 'certify', tablet, 'mine']).err).toMatch(/belongs to no workshop yet/)
    well('office', 'workshop', 'certify', tablet, 'bay 2 tablet')
    const log = join('home-office', 'workshop', 'log.jsonl')
    expect(on('tablet', ['workshop', 'join', log, '--root', '0'.repeat(20)]).err).toMatch(
      /not the one that you named/,
    )
    expect(well('tablet', 'workshop', 'join', log, '--root', print)).toMatch(
      /This device is “bay 2 tablet” there/,
    )
    expect(well('tablet', 'workshop', 'list')).toMatch(/bay 2 tablet, this one/)
    // It may sign, and may not say who else does.
    expect(on('tablet', ['workshop', 'revoke', 'office', '--why', 'x']).err).toMatch(
      /It would not count\. .*no owner/,
    )
  })

  test('a job file is sealed, written on, and sealed again: only what is new is added', () => {
    const first = jobFile('7-0412.job.json', demo.entries)
    expect(well('office', 'seal', first, '--person', 'KB')).toMatch(/^71 entries sealed by this device/)
    expect(well('office', 'seal', first, '--person', 'KB')).toMatch(/^Nothing new to seal/)
    const correction: Entry = { kind: 'correction', data: { of: 71, data: { text: 'the ramp is steep' } } }
    jobFile('7-0412.job.json', [...demo.entries, note('the ramp is step'), correction])
    expect(well('office', 'seal', first, '--person', 'KB')).toMatch(/^2 entries sealed/)
    const [written, corrected] = logLines('7-0412')
      .slice(-2)
      .map((line) => JSON.parse(line))
    expect(corrected.data.of).toBe(written.id)
    expect(corrected).toMatchObject({ seq: 73, device: office, person: 'KB' })
    // What was sealed and is written otherwise now is told, and nothing happens.
    jobFile('7-0412.job.json', [...demo.entries, note('the ramp is steep'), correction])
    expect(on('office', ['seal', first, '--person', 'KB'])).toMatchObject({
      code: 2,
      err: expect.stringMatching(/entries\[71\]: It was sealed otherwise/),
    })
    jobFile('7-0412.job.json', demo.entries)
    expect(on('office', ['seal', first, '--person', 'KB']).err).toMatch(
      /lacks entries that were sealed before/,
    )
    expect(logLines('7-0412')).toHaveLength(73)
  })

  test('two devices go on apart; merged, what they say against each other is listed', () => {
    cpSync(join(top, '7-0412'), join(top, 'stick', '7-0412'), { recursive: true })
    const pressures = (front: string): Entry => ({ kind: 'set pressures', data: { front, rear: '400 kPa' } })
    const mine = jobFile('mine.job.json', [pressures('320 kPa'), note('on the ramp')])
    const theirs = jobFile('theirs.job.json', [pressures('330 kPa')])
    well('office', 'seal', mine, '--person', 'KB', '--add')
    well('tablet', 'seal', theirs, '--person', 'MT', '--in', 'stick')
    const { code, out } = on('office', ['merge', '7-0412', 'stick/7-0412', '--to', 'both'])
    expect(code).toBe(1)
    expect(out).toMatch(/Together 76 entries, all intact/)
    expect(out).toMatch(/! .*\n {4}entries\[\d+\], set pressures, (KB|MT), .*: [0-9a-f]{64}\n/)
    expect(on('office', ['sign-off', 'both', '--person', 'KB'])).toMatchObject({
      code: 1,
      out: expect.stringMatching(/^Not signed: .*decide first/),
    })
    const places = [...out.matchAll(/entries\[(\d+)\], set pressures/g)].map(([, place]) => Number(place))
    // The decision is written at the end of the merged file, by those places, and sealed.
    expect(on('office', ['merge', '7-0412', 'stick/7-0412', '--to', 'both.job.json']).code).toBe(1)
    const both = JSON.parse(readFileSync(join(top, 'both.job.json'), 'utf8'))
    const data = { of: places, keep: places[0], why: 'looked at the gauge again', hand: 'KB' }
    both.entries.push({ kind: 'decision', data })
    writeFileSync(join(top, 'both.job.json'), JSON.stringify(both))
    for (const _ of [1, 2]) well('office', 'seal', 'both.job.json', '--person', 'KB', '--in', 'done')
    expect(logLines('done/7-0412')).toHaveLength(77)
    // Merging again, in any order, gives the same log.
    for (const [to, files] of [
      ['x.job.json', ['7-0412', 'stick/7-0412', 'done/7-0412']],
      ['y.job.json', ['done/7-0412', 'stick/7-0412', '7-0412', '7-0412']],
    ] as const)
      expect(on('tablet', ['merge', ...files, '--to', to]).code).toBe(0)
    expect(readFileSync(join(top, 'x.job.json'), 'utf8')).toBe(readFileSync(join(top, 'y.job.json'), 'utf8'))
    expect(well('office', 'check', 'x.job.json')).toMatch(/fine/)
    expect(on('office', ['merge', 'done/7-0412', '--to', 'x.job.json'])).toMatchObject({ code: 2, out: '' })
  })

  test('signed off, proven, verified anywhere: 0, and what each part says', () => {
    well('office', 'sign-off', 'done/7-0412', '--person', 'KB')
    expect(well('office', 'prove', 'done/7-0412', '--to', 'a.proof.json')).toContain(`root is ${print}`)
    const out = well('guest', 'verify', 'a.proof.json', '--root', print)
    expect(out).toMatch(/Intact: nobody changed any of its 78 sealed entries/)
    expect(out).toMatch(/Known hand: “office”.*77 entries|Known hand: “office”/)
    expect(out).toMatch(/Known hand: “bay 2 tablet”.*signed 1 entry/)
    expect(out).toMatch(/77 entries covered, none left out/)
    expect(out).toMatch(/comes out again/)
    expect(well('office', 'verify', 'done/7-0412')).toMatch(/Intact/)
    // without the paper, or with another one, no hand is known
    expect(on('guest', ['verify', 'a.proof.json'])).toMatchObject({
      code: 1,
      out: expect.stringMatching(/Intact[\s\S]*Unknown hand/),
    })
    const other = on('guest', ['verify', 'a.proof.json', '--root', '1f2e3 d4c5b 6a798 0f1e2', '--json'])
    expect([other.code, JSON.parse(other.out).verdict]).toMatchObject([
      1,
      { intact: true, rootTrusted: false },
    ])
    expect(on('office', ['prove', 'done/7-0412', '--to', 'a.proof.json']).code).toBe(2)
  })

  test('a flipped bit, a late entry, a clock put back, a revoked device: each is said, and ends with 1', () => {
    const bytes = readFileSync(join(top, 'a.proof.json'))
    const at = bytes.indexOf('on the ramp')
    bytes[at]! ^= 1
    writeFileSync(join(top, 'b.proof.json'), bytes)
    const line = bytes.subarray(0, at).toString().split('\n').length
    const flipped = on('guest', ['verify', 'b.proof.json', '--root', print])
    expect(flipped.code).toBe(1)
    expect(flipped.out).toMatch(new RegExp(`Not intact:\n {2}entry ${line - 1}: `))
    const proven = (name: string) => {
      well('tablet', 'prove', 'done/7-0412', '--to', name)
      return on('guest', ['verify', name, '--root', print])
    }
    const late = jobFile('late.job.json', [note('it pulls')])
    well('tablet', 'seal', late, '--person', 'MT', '--in', 'done', '--add')
    const uncovered = proven('c.proof.json')
    expect(uncovered).toMatchObject({ code: 1, out: expect.stringMatching(/1 entry not covered: 79\./) })
    expect(uncovered.out).not.toMatch(/Back-dated/)
    well('office', 'sign-off', 'done/7-0412', '--person', 'KB')
    expect(proven('c2.proof.json').code).toBe(0)
    jobFile('late.job.json', [{ ...note('it pulled'), at: '2020-01-01T08:00:00Z' }])
    well('tablet', 'seal', late, '--person', 'MT', '--in', 'done', '--add')
    well('office', 'sign-off', 'done/7-0412', '--person', 'KB')
    const said = proven('c3.proof.json')
    expect(said).toMatchObject({ code: 1, out: expect.stringMatching(/Back-dated: the clock of entry 81/) })
    expect(said.out).toMatch(/\(entry 82\): 81 entries covered, none left out/)
    well('office', 'workshop', 'revoke', 'bay 2 tablet', '--why', 'lost on the quay')
    well('office', 'prove', 'done/7-0412', '--to', 'd.proof.json')
    expect(on('guest', ['verify', 'd.proof.json', '--root', print])).toMatchObject({
      code: 1,
      out: expect.stringMatching(/Intact[\s\S]*Revoked hand/),
    })
  })

  test('the last owner cannot be locked out, and the paper lets in', () => {
    expect(on('office', ['workshop', 'revoke', 'office', '--why', 'x']).err).toMatch(/without an owner/)
    const words = ['workshop', 'certify', tablet, 'new office', '--owner', '--by-root']
    const slip = paper.replace(/\d/, (d) => String((Number(d) + 1) % 10))
    expect(on('office', words, slip).err).toMatch(/does not agree with its last group/)
    expect(on('office', words, 'abc').err).toMatch(/seventeen groups/)
    expect(on('office', words, `${paper}\n`)).toMatchObject({ code: 0, err: '' })
    expect(well('office', 'workshop', 'list')).toMatch(/new office, owner/)
  })

  test('a spoilt log is told at its line, and mended from another copy', () => {
    cpSync(join(top, 'done', '7-0412'), join(top, 'spoilt'), { recursive: true })
    const lines = logLines('spoilt')
    lines[4] = lines[4]!.replace('{', '{ ')
    writeFileSync(join(top, 'spoilt', 'log.jsonl'), `${lines.join('\n')}\n`)
    expect(on('office', ['verify', 'spoilt']).out).toMatch(/Not intact:\n {2}line 5: /)
    expect(on('office', ['prove', 'spoilt']).err).toMatch(/line 5/)
    expect(on('office', ['merge', 'spoilt', '--to', 'alone'])).toMatchObject({ code: 1 })
    expect(existsSync(join(top, 'alone'))).toBe(false)
    expect(well('office', 'merge', 'spoilt', '7-0412', 'stick/7-0412', '--to', 'mended')).toMatch(
      /line 5: .* It is left out/,
    )
    expect(logLines('mended')).toHaveLength(82)
  })

  test('what cannot be used is told, ends with 2, and writes nothing', () => {
    const told = (...words: string[]) => {
      const { code, out, err } = on('office', words)
      expect([code, out]).toEqual([2, ''])
      return err
    }
    expect(told('verify', 'nothing.json')).toMatch(/There is no such file/)
    expect(told('verify', 'home-office')).toMatch(/nothing there/)
    expect(told('verify', 'front.corner.json')).toMatch(/front\.corner\.json/)
    expect(told('seal', 'done/7-0412', '--person', 'KB')).toMatch(/sealed already/)
    expect(told('seal', '7-0412.job.json')).toMatch(/--person/)
    expect(told('sign-off', 'x.job.json', '--person', 'KB')).toMatch(/kept in its folder/)
    const other = jobFile('other.job.json', [note('a')])
    expect(told('merge', '7-0412', other, '--to', 'z')).toMatch(/not sealed/)
    writeFileSync(join(top, other), JSON.stringify({ ...demo, job: '7-0999', entries: [] }))
    expect(told('merge', '7-0412', other, '--to', 'z')).toMatch(/Only files of one job/)
    expect(existsSync(join(top, 'z'))).toBe(false)
    if (process.platform === 'win32') return
    chmodSync(join(top, 'home-office', 'device.key'), 0o644)
    expect(told('seal', '7-0412.job.json', '--person', 'KB')).toMatch(/Others may read this device’s key/)
    chmodSync(join(top, 'home-office', 'device.key'), 0o600)
  })
})

test('CM16 entries that are kept while a file beside them is not: both are said', () => {
  if (process.platform === 'win32') return
  const file = jobFile('big.job.json', demo.entries.slice(0, 3))
  // No file may grow beyond 4 kB: three entries can, a corner model cannot.
  const run = spawnSync(
    'bash',
    [
      '-c',
      `trap '' XFSZ; ulimit -f 4; exec "$0" "$@"`,
      process.execPath,
      command,
      'seal',
      file,
      '--person',
      'KB',
      '--in',
      'small',
    ],
    { cwd: top, encoding: 'utf8', env: { ...process.env, AXLEWRIGHT_HOME: join(top, 'home-guest') } },
  )
  expect([run.status, run.stdout]).toEqual([2, ''])
  expect(run.stderr).toMatch(
    /The entries are on disk in .*; a file that goes with them is not\..* no room left/,
  )
  expect(logLines('small/7-0412')).toHaveLength(3)
  expect(well('guest', 'seal', file, '--person', 'KB', '--in', 'small')).toMatch(/^Nothing new/)
  expect(readdirSync(join(top, 'small', '7-0412', 'pinned'))).toHaveLength(4)
})

test('CM16 seal killed at once after its log appeared: the log opens, and sealing again ends the work', async () => {
  for (let i = 0; i < 3; i++) {
    const place = `killed-${i}`
    const file = jobFile(`${place}.job.json`, demo.entries)
    const run = spawn(process.execPath, [command, 'seal', file, '--person', 'KB', '--in', place], {
      cwd: top,
      stdio: 'ignore',
      env: { ...process.env, AXLEWRIGHT_HOME: join(top, 'home-guest') },
    })
    const ended = new Promise((resolve) => run.on('close', resolve))
    const log = join(top, place, '7-0412', 'log.jsonl')
    while (!existsSync(log) && run.exitCode === null) await new Promise((resolve) => setImmediate(resolve))
    run.kill('SIGKILL')
    await ended
    well('guest', 'seal', file, '--person', 'KB', '--in', place)
    expect(logLines(`${place}/7-0412`)).toHaveLength(71)
    expect(on('guest', ['verify', `${place}/7-0412`]).out).toMatch(/Intact: nobody changed any of its 71/)
  }
})
