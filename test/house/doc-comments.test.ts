import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, expect, test } from 'vitest'

// Every rule of the check is broken once on a small room, and must be reported; the sound room must pass.
const folder = mkdtempSync(join(tmpdir(), 'doc-comments-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function check(name: string, files: Record<string, string>): { status: number; out: string } {
  for (const [path, text] of Object.entries(files)) {
    const at = join(folder, name, path)
    mkdirSync(dirname(at), { recursive: true })
    writeFileSync(at, text)
  }
  try {
    const args = ['--import', 'tsx', 'scripts/doc-comments.mjs', '--check', '--root', join(folder, name)]
    return { status: 0, out: execFileSync(process.execPath, args, { encoding: 'utf8' }) }
  } catch (error) {
    const { status, stdout } = error as { status: number; stdout: string }
    return { status, out: stdout }
  }
}

const doc = (...lines: string[]) => `/**\n${lines.map((line) => ` * ${line}`).join('\n')}\n */\n`
const sound = `${doc(
  'Half of it.',
  '@throws {Refusal} `not-finite`',
  '@source definition',
  '@example half(5) // 2.5 mm',
  '@example half(-2 / 3) // −0.333',
  "@example half('x') // throws not-finite",
)}export function half(value: unknown): number {
  if (!Number.isFinite(value)) throw Object.assign(new Error(), { code: 'not-finite' })
  return Number(value) / 2
}
${doc('A pair.', '@source definition', '@example pair(1) // [0.33, {"a": "b"}, true, null]')}export const pair = (n: number) => [n / 3, { a: 'b' }, n === 1, null]
/** A name. @source definition */
export type Name = string
`
const soundTest = "refuses('not-finite', () => half(Number.NaN))\n"

test('a sound room passes', () => {
  const { status, out } = check('sound', {
    'src/one/index.ts': "export * from './half.ts'\n",
    'src/one/half.ts': sound,
    'test/property/one/half.test.ts': soundTest,
  })
  expect(out).toContain('3 exports of 1 rooms, 4 examples run, 1 codes looked for, 0 problems')
  expect(status).toBe(0)
})

const faults: readonly (readonly [name: string, text: string, says: string])[] = [
  ['no comment', 'export const a = 1\n', 'a.ts:1: a: has no doc comment'],
  ['no source', '/** A. */\nexport type A = 1\n', 'a.ts:1: A: has no @source'],
  ['empty source', '/** A.\n * @source\n */\nexport type A = 1\n', 'A: has no @source'],
  ['says nothing', '/** @source definition */\nexport type A = 1\n', 'does not say what it is'],
  ['too long', `${doc(...Array(15).fill('A.'), '@source definition')}export const a = 1\n`, 'has 16 lines'],
  [
    'wrong last digit',
    `${doc('A.', '@source definition', '@example third(1) // 0.34')}export const third = (n: number) => n / 3\n`,
    'a.ts:4: third: @example third(1) gives 0.333',
  ],
  [
    'wrong text',
    `${doc('A.', '@source definition', '@example a() // b')}export const a = () => 'a'\n`,
    'gives "a", not b',
  ],
  [
    'a number is not its text',
    `${doc('A.', '@source definition', '@example a() // 1')}export const a = () => ['1']\n`,
    'gives ["1"], not 1',
  ],
  [
    'missing key',
    `${doc('A.', '@source definition', '@example a() // {"x": 1}')}export const a = () => ({ x: 1, y: 2 })\n`,
    'not {"x": 1}',
  ],
  [
    'nothing expected',
    `${doc('A.', '@source definition', '@example a()')}export const a = () => 1\n`,
    'is not of the form',
  ],
  [
    'throws in the example',
    `${doc('A.', '@source definition', '@example a() // 1')}export const a = () => { throw new Error('no') }\n`,
    'throws no',
  ],
  [
    'code without a test',
    `${doc('A.', '@throws {Refusal} `too-far` or `too-near`; `tested`', '@source definition')}export const a = () => ['too-far', 'too-near', 'tested']\n`,
    'a.ts:3: a: @throws `too-near`, and no test',
  ],
  [
    'code that nothing throws',
    `${doc('A.', '@throws {Refusal} `untold`', '@source definition')}export const a = () => 1\n`,
    '@throws `untold`, and no code throws it',
  ],
  [
    'throws without a code',
    `${doc('A.', '@throws {Refusal} when it is bad', '@source definition')}export const a = 1\n`,
    'names no `code`',
  ],
]
test('each broken rule is reported with its place', () => {
  const files: Record<string, string> = {}
  faults.forEach(([, text], i) => {
    files[`src/r${i}/index.ts`] = "export * from './a.ts'\n"
    files[`src/r${i}/a.ts`] = text
    files[`test/property/r${i}/a.test.ts`] = "refuses('tested', () => a())\nrefuses('untold', () => a())\n"
  })
  const { status, out } = check('faults', files)
  expect(status).toBe(1)
  for (const [i, [name, , says]] of faults.entries()) {
    const lines = out.split('\n').filter((line) => line.startsWith(`src/r${i}/`))
    expect(lines.join('\n'), name).toContain(says)
  }
  expect(out).toContain('`too-far`, and no test')
})

test('an example may use the values that the tests keep for its room', () => {
  const { status, out } = check('values', {
    'src/one/index.ts': `${doc('A.', '@source definition', '@example twice(five) // 10')}export const twice = (n: number) => 2 * n\n`,
    'test/support/one-examples.ts': 'export const five = 5\n',
  })
  expect(out).toContain('1 examples run, 0 codes looked for, 0 problems')
  expect(status).toBe(0)
})

test('a door that exports nothing, or cannot be loaded, fails', () => {
  expect(check('empty', { 'src/one/index.ts': 'export {}\n' })).toMatchObject({
    status: 1,
    out: expect.stringContaining('No export was seen'),
  })
  const broken = check('broken', {
    'src/one/index.ts': '/** A. @source definition */\nexport const a: number = missing\n',
  })
  expect(broken.status).toBe(1)
  expect(broken.out).toContain('the door cannot be loaded')
})
