import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { deflateSync, inflateSync, unzipSync, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { photosNamed } from '../../../src/job/index.ts'
import { carriedJob, readCarriedJob } from '../../../src/proof/carry/carried-job.ts'
import { unpacked } from '../../../src/proof/carry/packed.ts'
import { readZip } from '../../../src/proof/carry/read-zip.ts'
import { type ZipFile, zipInParts } from '../../../src/proof/carry/zip-in-parts.ts'
import { isZipName } from '../../../src/proof/carry/zip-name.ts'
import { zipEnd, zipHead, zipLine } from '../../../src/proof/carry/zip-spelling.ts'
import { hashOf } from '../../../src/proof/index.ts'
import { crc32 } from '../../../src/proof/photo/crc-32.ts'
import { Refusal } from '../../../src/quantity/index.ts'
import { law, refuses } from '../../support/law.ts'
import { picture, pictures } from '../../support/photos.ts'

const text = (said: string) => new TextEncoder().encode(said)
const limits = { files: 20, each: 200_000, all: 400_000 }
const zipped = (files: readonly ZipFile[]) => {
  const parts: Uint8Array[] = []
  const zip = zipInParts((part) => parts.push(part))
  for (const file of files) zip.add(file)
  zip.end()
  return Uint8Array.from(Buffer.concat(parts))
}
const source = (bytes: Uint8Array) => ({
  size: bytes.length,
  read: (at: number, n: number) => bytes.subarray(at, at + n),
})
const read = (bytes: Uint8Array) => readZip(source(bytes), limits)
const codeOf = (act: () => unknown): Refusal | null => {
  try {
    act()
    return null
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
}

const anyFiles = fc.uniqueArray(
  fc.record({
    name: fc.stringMatching(/^[a-z]{1,8}(\/[a-z0-9]{1,8}\.[a-z]{1,3})?$/).filter(isZipName),
    bytes: fc.oneof(
      fc.uint8Array({ maxLength: 3000 }),
      fc.string({ maxLength: 3000 }).map((said) => text(said.repeat(3))),
    ),
    pack: fc.boolean(),
  }),
  { selector: ({ name }) => name, minLength: 1, maxLength: 8 },
)

law('CA1 what goes in comes out as it was', anyFiles, (files) => {
  const out = read(zipped(files)).map((one) => ({ name: one.name, bytes: one.bytes() }))
  expect(out).toEqual(files.map(({ name, bytes }) => ({ name, bytes: Uint8Array.from(bytes) })))
  return true
})

const proof = text(`${'{"entries":[\n'.repeat(300)}}`)
const photos = new Map(pictures.map((name) => [hashOf(picture(name)), picture(name)]))
const whole = carriedJob({ proof, photos })

test('CA1 a job with its photos comes out as it was', () => {
  expect(readCarriedJob(whole)).toEqual({
    proof,
    photos: new Map([...photos].sort(([a], [b]) => (a < b ? -1 : 1))),
  })
  expect(readCarriedJob(carriedJob({ proof, photos: new Map() })).photos.size).toBe(0)
})

test('CA2 the same job gives the same bytes, whatever the time, the place and the order of its photos', () => {
  const zone = process.env['TZ']
  for (const place of ['Pacific/Kiritimati', 'America/St_Johns']) {
    process.env['TZ'] = place
    expect(carriedJob({ proof, photos: new Map([...photos].toReversed()) })).toEqual(whole)
  }
  if (zone === undefined) delete process.env['TZ']
  else process.env['TZ'] = zone
})

law(
  'CA3 each flipped bit is found',
  fc.nat({ max: whole.length * 8 - 1 }),
  (bit) => {
    const bytes = whole.slice()
    bytes[bit >> 3]! ^= 1 << (bit & 7)
    const refusal = codeOf(() => readCarriedJob(bytes))
    return refusal !== null && refusal.sentence.length > 20
  },
  { runs: 600 },
)

test('CA3 what is flipped in a file is told with its name', () => {
  let at = 0
  for (const { name } of readZip(source(whole), { ...limits, all: 1e6 })) {
    at = Buffer.from(whole).indexOf(name, at) + name.length
    for (const flip of [at, at + 40]) {
      const bytes = whole.slice()
      bytes[flip]! ^= 4
      expect(codeOf(() => readCarriedJob(bytes))?.sentence).toContain(name)
    }
  }
})

test('CA3 cut anywhere, it is refused, and the file is named within which it ends', () => {
  for (let to = 0; to < whole.length; to += 97) {
    const refusal = codeOf(() => readCarriedJob(whole.slice(0, to)))
    expect(refusal?.code).toBe(to < 4 ? 'no-carried-file' : 'cut-off')
  }
  expect(codeOf(() => readCarriedJob(whole.slice(0, 80)))?.sentence).toContain('job.proof.json')
})

describe('CA4 any program that opens a ZIP opens it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'axlewright-zip-'))
  const path = join(folder, 'a.job.zip')
  writeFileSync(path, whole)
  test('the library’s own reader', () => {
    const out = unzipSync(whole)
    expect(Object.keys(out)).toHaveLength(photos.size + 1)
    expect(out['job.proof.json']).toEqual(proof)
    for (const [name, bytes] of Object.entries(out))
      if (name.startsWith('photos/')) expect(hashOf(bytes)).toBe(name.slice(7, 71))
  })
  test('Python’s own zip module finds it whole, and the same in it', () => {
    const run = spawnSync('python3', [
      '-c',
      'import sys,zipfile\nz=zipfile.ZipFile(sys.argv[1])\nassert z.testzip() is None\nz.extractall(sys.argv[2])\nprint(z.comment.decode())',
      path,
      join(folder, 'out'),
    ])
    // Where there is no Python, the test before this one has looked.
    if (run.error) return
    expect(run.stderr.toString()).toBe('')
    expect(run.stdout.toString()).toMatch(/^axlewright sha256 [0-9a-f]{64}\n$/)
    expect(readFileSync(join(folder, 'out', 'job.proof.json'))).toEqual(Buffer.from(proof))
    expect(readdirSync(join(folder, 'out', 'photos'))).toHaveLength(photos.size)
    for (const name of readdirSync(join(folder, 'out', 'photos')))
      expect(hashOf(readFileSync(join(folder, 'out', 'photos', name)))).toBe(name.slice(0, 64))
    rmSync(folder, { recursive: true })
  })
})

/** A ZIP whose heads say what they are told to. */
function forged(
  members: readonly {
    name: string
    held: Uint8Array
    method: 0 | 8
    size?: number
    at?: number
    crc?: number
  }[],
): Uint8Array {
  const parts: Uint8Array[] = []
  const lines: Uint8Array[] = []
  let at = 0
  for (const { name, held, method, size = held.length, crc = crc32(held), at: said = at } of members) {
    const member = { name, method, crc, within: held.length, size, at: said }
    parts.push(zipHead(member), held)
    lines.push(zipLine(member))
    at += zipHead(member).length + held.length
  }
  const body = Buffer.concat([...parts, ...lines])
  const end = { count: members.length, at, size: body.length - at, digest: hashOf(body) }
  return Uint8Array.from(Buffer.concat([body, zipEnd(end)]))
}

describe('CA5 nothing is unpacked further than the limits', () => {
  const much = new Uint8Array(30_000_000)
  const bomb = deflateSync(much, { level: 9 })
  test('what the forger writes is otherwise taken', () => {
    expect(read(forged([{ name: 'a', held: text('well'), method: 0 }]))[0]!.bytes()).toEqual(text('well'))
  })
  test('sizes that are told too large are refused before anything is unpacked', () => {
    const told = forged([{ name: 'a', held: bomb, method: 8, size: much.length, crc: crc32(much) }])
    expect(codeOf(() => read(told))?.code).toBe('too-much')
    const many = Array.from({ length: 21 }, (_, i) => ({
      name: `a${i}`,
      held: text('b'),
      method: 0 as const,
    }))
    expect(codeOf(() => read(forged(many)))?.code).toBe('too-much')
    const sum = Array.from({ length: 3 }, (_, i) => ({
      name: `a${i}`,
      held: new Uint8Array(150_000),
      method: 0 as const,
    }))
    expect(codeOf(() => read(forged(sum)))?.code).toBe('too-much')
  })
  test('one file that is larger than one may be', () => {
    const large = forged([{ name: 'a', held: new Uint8Array(300_000), method: 0 }])
    expect(codeOf(() => read(large))?.code).toBe('too-much')
  })
  test('a file’s head says what the list says, though all else fits', () => {
    const other = forged([{ name: 'a', held: text('well'), method: 0 }])
    other[30] = 'b'.charCodeAt(0)
    const body = other.subarray(0, -22 - 82)
    const end = { count: 1, at: 35, size: body.length - 35, digest: hashOf(body) }
    const whole = Uint8Array.from(Buffer.concat([body, zipEnd(end)]))
    expect(codeOf(() => read(whole))?.code).toBe('changed')
    whole[30] = 'a'.charCodeAt(0)
    expect(
      read(
        Uint8Array.from(
          Buffer.concat([
            whole.subarray(0, body.length),
            zipEnd({ ...end, digest: hashOf(whole.subarray(0, body.length)) }),
          ]),
        ),
      ).length,
    ).toBe(1)
  })
  test('what unpacks to more than is told stops there', () => {
    const lying = read(
      forged([{ name: 'a', held: bomb, method: 8, size: 1000, crc: crc32(much.subarray(0, 1000)) }]),
    )
    expect(codeOf(() => lying[0]!.bytes())?.code).toBe('changed')
    expect(unpacked(deflateSync(text('abc')), 4)).toBe(null)
    expect(unpacked(deflateSync(text('abc')), 2)).toBe(null)
    expect(unpacked(deflateSync(text('abc')), 3)).toEqual(text('abc'))
  })
  test('files do not lie over each other', () => {
    const over = forged([
      { name: 'a', held: text('well'), method: 0 },
      { name: 'b', held: text('well'), method: 0, at: 0 },
    ])
    expect(codeOf(() => read(over))?.code).toBe('changed')
  })
  test('names lead nowhere else, and stand there once', () => {
    for (const name of [
      '../a',
      '/a',
      'a/../b',
      'a\\b',
      'C:a',
      'con',
      'a.',
      'aux.txt',
      'a//b',
      '',
      'é',
      'a b',
      '.a',
    ])
      expect([name, codeOf(() => read(forged([{ name, held: text('x'), method: 0 }])))?.code]).toEqual([
        name,
        'strange-name',
      ])
    const twice = ['a', 'A'].map((name) => ({ name, held: text('x'), method: 0 as const }))
    expect(codeOf(() => read(forged(twice)))?.code).toBe('strange-name')
  })
  test('a ZIP that another program packed is refused', () => {
    const other = zipSync({ 'job.proof.json': proof })
    expect(codeOf(() => readCarriedJob(other))?.sentence).toContain('Another program packed')
  })
})

test('CA6 a photo is what its name says, or the file is refused', () => {
  const [hash] = [...photos.keys()]
  const job = { name: 'job.proof.json', held: proof, method: 0 as const }
  const wrong = forged([job, { name: `photos/${hash}.jpg`, held: text('another'), method: 0 }])
  expect(codeOf(() => readCarriedJob(wrong))?.code).toBe('changed')
  const strange = forged([job, { name: 'photos/readme.txt', held: text('x'), method: 0 }])
  expect(codeOf(() => readCarriedJob(strange))?.code).toBe('strange-name')
  const none = forged([{ name: 'photos', held: text('x'), method: 0 }])
  expect(codeOf(() => readCarriedJob(none))?.code).toBe('no-carried-file')
})

law(
  'CA7 whatever the bytes, a file is taken or refused in a sentence',
  fc.record({
    head: fc.constantFrom(whole.slice(0, 64), new Uint8Array()),
    bytes: fc.uint8Array({ maxLength: 600 }),
    tail: fc.constantFrom(whole.slice(-endLength(), undefined), whole.slice(-400), new Uint8Array()),
  }),
  ({ head, bytes, tail }) =>
    codeOf(() => readCarriedJob(Uint8Array.from(Buffer.concat([head, bytes, tail])))) !== null,
  { runs: 1000 },
)
function endLength() {
  return zipEnd({ count: 0, at: 0, size: 0, digest: 'a'.repeat(64) }).length
}

test('CA8 the photos that a log names are found, those of its corrections too', () => {
  const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((digit) => digit.repeat(64)) as [
    string,
    string,
    string,
    string,
  ]
  const log = [
    { kind: 'note', data: { text: 'x' } },
    { kind: 'photo', data: { hash: a, of: 'x' } },
    { kind: 'mark', data: { what: 'x', photo: b } },
    { kind: 'deviation', data: { what: 'other', photo: a } },
    { kind: 'correction', data: { of: 1, data: { hash: c } } },
    { kind: 'correction', data: { of: 2, data: { photo: d } } },
    { kind: 'note', data: { text: 'x', hash: 'e'.repeat(64) } },
    { kind: 'correction', data: { of: 2, data: { photo: null } } },
  ]
  expect([...photosNamed(log)]).toEqual([
    [a, 1],
    [b, 2],
    [c, 4],
    [d, 5],
  ])
})

refuses('too-much', () =>
  carriedJob({ proof, photos: new Map([['a'.repeat(64), new Uint8Array(128 * 2 ** 20 + 1)]]) }),
)
refuses('strange-name', () => zipped([{ name: '../a', bytes: proof, pack: true }]))
refuses('strange-name', () =>
  zipped([
    { name: 'a', bytes: proof, pack: true },
    { name: 'A', bytes: proof, pack: true },
  ]),
)
refuses('no-carried-file', () => readCarriedJob(text('no zip')))
refuses('cut-off', () => readCarriedJob(whole.slice(0, -1)))
refuses('changed', () =>
  readCarriedJob(Uint8Array.from(whole, (byte, i) => (i === whole.length - 1 ? byte ^ 1 : byte))),
)

law(
  'CA1 packed bytes are RFC 1951’s, for the library’s other way in as well',
  fc.uint8Array({ maxLength: 4000 }),
  (bytes) => {
    const [content] = [zipped([{ name: 'a', bytes, pack: true }])]
    const at = 31
    const length = new DataView(content.buffer).getUint32(18, true)
    expect(inflateSync(content.slice(at, at + length))).toEqual(bytes)
    return true
  },
  { runs: 50 },
)
