import { spawnSync } from 'node:child_process'
import {
  copyFileSync,
  cpSync,
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
import { jpegAsTaken } from '../support/photos.ts'

const root = fileURLToPath(new URL('../../', import.meta.url))
const top = mkdtempSync(join(tmpdir(), 'axlewright-personal-'))
const examples = join(root, 'examples', 'port-unit-07')
const demo = JSON.parse(readFileSync(join(examples, 'port-unit-07.job.json'), 'utf8'))
let command: string

beforeAll(async () => {
  command = await buildCommand()
  for (const file of ['front.corner.json', 'rear.corner.json', 'port-unit-07.spec.json'])
    copyFileSync(join(examples, file), join(top, file))
  copyFileSync(join(examples, '..', 'port-kit.kit.json'), join(top, 'port-kit.kit.json'))
  well('office', 'workshop', 'make', demo.workshop, '--device', 'office')
})
afterAll(() => rmSync(top, { recursive: true, force: true }))

/** The real command in a process of its own, on one of the devices. */
function on(device: string, words: readonly string[], input = '') {
  const run = spawnSync(process.execPath, [command, ...words], {
    cwd: top,
    encoding: 'utf8',
    env: { ...process.env, AXLEWRIGHT_HOME: join(top, `home-${device}`) },
    input,
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}
function well(device: string, ...words: string[]): string {
  const { code, out, err } = on(device, words)
  expect([code, err]).toEqual([0, ''])
  return out
}
function jobFile(name: string, entries: readonly Entry[]): string {
  writeFileSync(join(top, name), JSON.stringify({ ...demo, entries }))
  return name
}
const bytesIn = (folder: string): string =>
  readdirSync(join(top, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => join(top, folder, name))
    .filter((path) => statSync(path).isFile())
    .map((path) => readFileSync(path, 'latin1'))
    .join('\n')

const secrets = ['PO-RT 07', 'Iseult Quayle', '0000 0000 9B123 4567', '+00 555 0199']
const [plate, owner, vin, phone] = secrets as [string, string, string, string]
const withPeople: readonly Entry[] = [
  ...demo.entries.map((entry: Entry) =>
    entry.kind === 'arrival' ? { ...entry, data: { ...entry.data, vin, plate, owner, phone } } : entry,
  ),
  ...(demo.entries.some(({ kind }: Entry) => kind === 'arrival')
    ? []
    : [{ kind: 'arrival', data: { asked: 'pulls to the left', vin, plate, owner, phone } }]),
]

describe('CM30 what is personal', () => {
  let heads: string

  test('is sealed as a token; the sheet of the folder, and the paper of the proof, show it', () => {
    well('office', 'seal', jobFile('7-0412.job.json', withPeople), '--person', 'KB')
    const log = readFileSync(join(top, '7-0412', 'log.jsonl'), 'utf8')
    for (const secret of secrets) expect(log).not.toContain(secret)
    expect(well('office', 'seal', '7-0412.job.json', '--person', 'KB')).toMatch(/^Nothing new to seal/)
    well('office', 'sign-off', '7-0412', '--person', 'KB')
    expect(well('office', 'prove', '7-0412')).toMatch(/with 4 personal values/)
    heads = readFileSync(join(top, '7-0412', 'log.jsonl'), 'utf8')
    expect(well('office', 'verify', '7-0412.proof.json')).toMatch(/Personal values: 4 there\./)
    expect(well('office', 'verify', '7-0412')).toMatch(/Personal values: 4 there\./)
    on('office', ['paper', '7-0412.proof.json', '--html', 'with.html'])
    expect(readFileSync(join(top, 'with.html'), 'utf8')).toContain(vin)
    on('office', ['paper', '7-0412.proof.json', '--html', 'without.html', '--erased'])
    const without = readFileSync(join(top, 'without.html'), 'utf8')
    for (const secret of secrets) expect(without).not.toContain(secret)
    cpSync(join(top, '7-0412'), join(top, 'older'), { recursive: true })
  })

  test('field by field, then all of it, is erased; the log stays byte for byte, and it is proven as before', () => {
    expect(on('office', ['erase', '7-0412', 'hat size']).err).toMatch(
      /is called “hat size”\. There is: arrival\.owner, arrival\.phone, arrival\.plate, arrival\.vin\./,
    )
    expect(well('office', 'erase', '7-0412', 'phone', 'arrival.plate')).toMatch(/2 values erased\. /)
    expect(well('office', 'verify', '7-0412')).toMatch(/Personal values: 2 there, 2 erased/)
    expect(bytesIn('7-0412')).not.toContain(phone)
    expect(bytesIn('7-0412')).toContain(owner)
    expect(well('office', 'erase', '7-0412')).toMatch(/2 values erased, 2 were erased before\./)
    for (const secret of secrets) expect(bytesIn('7-0412')).not.toContain(secret)
    expect(readFileSync(join(top, '7-0412', 'log.jsonl'), 'utf8')).toBe(heads)
    expect(well('office', 'verify', '7-0412')).toMatch(
      /4 erased; that changes nothing that was sealed or signed/,
    )
    well('office', 'prove', '7-0412', '--overwrite')
    const proof = readFileSync(join(top, '7-0412.proof.json'), 'utf8')
    for (const secret of secrets) expect(proof).not.toContain(secret)
    expect(well('office', 'verify', '7-0412.proof.json')).toMatch(/Intact.*Known hand/s)
    on('office', ['paper', '7-0412.proof.json', '--html', 'gone.html'])
    expect(readFileSync(join(top, 'gone.html'), 'utf8')).toMatch(/VIN.{0,80}erased/s)
    // The job file that was typed is somebody else's to erase, and can still be sealed again.
    expect(well('office', 'seal', '7-0412.job.json', '--person', 'KB')).toMatch(/^Nothing new to seal/)
    for (const secret of secrets) expect(bytesIn('7-0412')).not.toContain(secret)
  })

  test('stays erased when an older copy is merged in; a proof is erased by itself', () => {
    on('office', ['merge', 'older', '7-0412', '--to', 'both'])
    for (const secret of secrets) expect(bytesIn('both')).not.toContain(secret)
    on('office', ['merge', 'older', '--to', 'older.job.json'])
    expect(readFileSync(join(top, 'older.job.json'), 'utf8')).toContain(owner)
    well('office', 'seal', 'older.job.json', '--person', 'KB', '--in', 'taken')
    expect(bytesIn('taken')).toContain(owner)
    well('office', 'prove', 'older', '--to', 'older.proof.json')
    const before = well('office', 'verify', 'older.proof.json')
    expect(well('office', 'erase', 'older.proof.json', 'owner')).toMatch(/1 value erased/)
    expect(readFileSync(join(top, 'older.proof.json'), 'utf8')).not.toContain(owner)
    expect(
      well('office', 'verify', 'older.proof.json').replace(
        '3 there, 1 erased; that changes nothing that was sealed or signed',
        '4 there',
      ),
    ).toBe(before)
  })

  test('a value that was changed is told, shown nowhere, and nothing is called intact', () => {
    cpSync(join(top, 'older'), join(top, 'forged'), { recursive: true })
    const beside = join(top, 'forged', 'beside')
    const name = readdirSync(beside).find((one) => readFileSync(join(beside, one), 'latin1').includes(vin))!
    writeFileSync(
      join(beside, name),
      readFileSync(join(beside, name), 'latin1').replace(vin, vin.replace('9', '8')),
      'latin1',
    )
    const { code, out } = on('office', ['verify', 'forged'])
    expect(code).toBe(1)
    expect(out).toMatch(/Not intact:\n {2}personal value \d: It is not what was sealed/)
    on('office', ['paper', 'forged', '--html', 'forged.html'])
    expect(readFileSync(join(top, 'forged.html'), 'utf8')).toMatch(/VIN.{0,80}not what was sealed/s)
  })

  test('a photo is erased where it is named, is told as that, and no copy brings it back', () => {
    writeFileSync(join(top, 'face.jpg'), jpegAsTaken('gray'))
    well('office', 'photo', 'older', 'face.jpg', '--words', 'the owner beside it', '--person', 'KB')
    const log = readFileSync(join(top, 'older', 'log.jsonl'), 'utf8')
    const hash = /"kind":"photo"/.test(log) ? /"hash":"([0-9a-f]{64})"/.exec(log)![1]! : ''
    expect(readdirSync(join(top, 'older', 'beside'))).toContain(hash)
    cpSync(join(top, 'older'), join(top, 'copy'), { recursive: true })
    well('office', 'carry', 'older', '--to', 'older.zip')
    expect(on('office', ['erase', 'older.zip']).err).toMatch(/file for carrying is not changed/)
    expect(on('office', ['erase', 'older', 'photo:000000']).err).toMatch(/names no one photo/)
    expect(on('office', ['erase', 'older.proof.json', 'photos']).err).toMatch(/lie in the job’s folder/)
    expect(well('office', 'erase', 'older', `photo:${hash.slice(0, 12)}`)).toMatch(/1 value erased\./)
    expect(readdirSync(join(top, 'older', 'beside'))).not.toContain(hash)
    expect(readFileSync(join(top, 'older', 'log.jsonl'), 'utf8')).toBe(log)
    on('office', ['merge', 'copy', '--to', 'older'])
    expect(readdirSync(join(top, 'older', 'beside'))).not.toContain(hash)
  })

  test('a workshop says how long it is kept; what is due is erased, and nothing else', () => {
    expect(on('office', ['erase', '.', '--due']).err).toMatch(/Nobody said how long/)
    well('office', 'workshop', 'keeps', '1200')
    expect(well('office', 'erase', '.', '--due')).toMatch(/^Nothing under \. is due yet\./)
    well('office', 'workshop', 'keeps', '0')
    expect(well('office', 'workshop', 'list')).toMatch(/what is personal is kept 0 months/)
    const due = well('office', 'erase', '.', '--due')
    expect(due).toMatch(/older: job 7-0412, 4 values erased/)
    expect(bytesIn('older')).not.toContain(owner)
  })
})

describe('CM31 people with a short code on a shared device', () => {
  const note = (text: string): Entry => ({ kind: 'note', data: { text } })

  test('who has one types it; a wrong one is told and makes the next one wait; nothing is written', () => {
    const made = on('shared', ['workshop', 'make', demo.workshop])
    expect(made.code).toBe(0)
    expect(on('shared', ['workshop', 'person', 'KB'], '1234').err).toMatch(
      /among the first that anybody tries/,
    )
    expect(on('shared', ['workshop', 'person', 'KB', '--role', 'owner'], '4711\n').out).toMatch(
      /“KB” is one of/,
    )
    expect(on('shared', ['workshop', 'person', 'MT'], '90210').code).toBe(0)
    expect(well('shared', 'workshop', 'list')).toMatch(/person KB, owner\n {2}person MT, technician/)
    const file = jobFile('code.job.json', [{ ...demo.entries[0] }, note('by code')])
    const seal = (sign: string, code: string) =>
      on('shared', ['seal', file, '--person', sign, '--in', 'coded'], code)
    for (const wrong of ['0815', '90210', '']) expect(seal('KB', wrong).err).toMatch(/not the code of “KB”/)
    expect(seal('KB', '4711').err).toMatch(/Too many wrong codes for “KB”\. Wait [1-5] s/)
    expect(readdirSync(top)).not.toContain('coded')
    expect(seal('MT', '90210').code).toBe(0)
    expect(seal('guest', '').out).toMatch(/“guest” is nobody of the workshop’s people/)
  })

  test('who left works no more under that sign; the last owner stays', () => {
    expect(on('shared', ['workshop', 'left', 'KB', '--why', 'moved']).err).toMatch(/without an owner/)
    expect(well('shared', 'workshop', 'left', 'MT', '--why', 'moved')).toMatch(/no longer one of/)
    expect(on('shared', ['seal', 'code.job.json', '--person', 'MT', '--in', 'coded'], '90210').err).toMatch(
      /“MT” left the workshop/,
    )
  })
})

describe('CM32 two values: decide; and correct', () => {
  const pressures = (front: string): Entry => ({ kind: 'set pressures', data: { front, rear: '400 kPa' } })

  test('what is said two ways is listed with its values, settled by an entry, and the rest stays', () => {
    well('a', 'seal', jobFile('d.job.json', demo.entries.slice(0, 3)), '--person', 'KB', '--in', 'mine')
    cpSync(join(top, 'mine', '7-0412'), join(top, 'theirs', '7-0412'), { recursive: true })
    const apart = (device: string, sign: string, front: string) =>
      well(
        device,
        'seal',
        jobFile(`${device}.job.json`, [pressures(front)]),
        '--person',
        sign,
        '--add',
        '--in',
        device === 'a' ? 'mine' : 'theirs',
      )
    apart('a', 'KB', '320 kPa')
    apart('b', 'MT', '330 kPa')
    on('a', ['merge', 'mine/7-0412', 'theirs/7-0412', '--to', 'together'])
    const list = on('a', ['decide', 'together'])
    expect(list.code).toBe(1)
    expect(list.out).toMatch(/^1\. Two people wrote of the same thing/)
    expect(list.out).toMatch(/front “320 kPa”/)
    expect(list.out).toMatch(/front “330 kPa”/)
    expect(list.out).not.toMatch(/rear “400 kPa”/)
    const [conflict] = JSON.parse(on('a', ['decide', 'together', '--json']).out)
    const kept = conflict.says.find((one: { data: { front: string } }) => one.data.front === '330 kPa')
    expect(on('a', ['decide', 'together', '--keep', '0', '--why', 'x', '--person', 'KB']).err).toMatch(
      /none of what can be kept/,
    )
    expect(on('a', ['decide', 'together', '--keep', String(kept.place)]).err).toMatch(/Say why and who/)
    const lines = readFileSync(join(top, 'together', 'log.jsonl'), 'utf8')
    expect(
      well(
        'a',
        'decide',
        'together',
        '--keep',
        kept.id.slice(0, 10),
        '--why',
        'looked again',
        '--person',
        'KB',
      ),
    ).toMatch(/Nothing is left to decide/)
    const after = readFileSync(join(top, 'together', 'log.jsonl'), 'utf8')
    expect(after.startsWith(lines)).toBe(true)
    expect(after.slice(lines.length).trim().split('\n')).toHaveLength(1)
    expect(well('a', 'decide', 'together')).toMatch(/says nothing two ways/)
    expect(on('a', ['verify', 'together']).out).toMatch(/Intact/)
  })

  test('a field is typed over as an entry of its own; what cannot be read changes nothing', () => {
    const log = () => readFileSync(join(top, 'together', 'log.jsonl'), 'utf8')
    const before = log()
    const at = before.split('\n').findIndex((line) => line.includes('"kind":"opened"'))
    expect(
      well('a', 'correct', 'together', String(at), 'complaint', 'pulls right', '--person', 'KB'),
    ).toMatch(/now says “pulls right”/)
    expect(log().slice(before.length)).toContain('"data":{"complaint":"pulls right"}')
    const once = log()
    expect(on('a', ['correct', 'together', String(at), 'corners', 'x', '--person', 'KB']).err).toMatch(
      /no such field/,
    )
    expect(on('a', ['correct', 'together', '999', 'complaint', 'x', '--person', 'KB']).err).toMatch(
      /no entry “999”/,
    )
    const pressure = JSON.parse(once.split('\n').find((line) => line.includes('330 kPa'))!)
    expect(on('a', ['correct', 'together', pressure.id, 'front', 'three bar', '--person', 'KB']).code).toBe(2)
    expect(on('a', ['correct', 'd.job.json', '0', 'complaint', 'x', '--person', 'KB']).err).toMatch(
      /kept in its folder/,
    )
    expect(log()).toBe(once)
  })
})
