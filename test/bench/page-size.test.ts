import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, expect, test } from 'vitest'
import { pageSize } from '../../bench/page-size.ts'

const folder = mkdtempSync(join(tmpdir(), 'page-size-'))
mkdirSync(join(folder, 'assets'))
const put = (name: string, text: string): number => {
  writeFileSync(join(folder, name), text)
  return gzipSync(text, { level: 9 }).length / 1000
}
afterAll(() => rmSync(folder, { recursive: true }))

test('first page: scripts of index.html and what they import count, what is called for later does not', () => {
  put(
    'index.html',
    '<script type="module" crossorigin src="./assets/main.js"></script><link rel="modulepreload" href="./assets/ahead.js"><link rel="stylesheet" href="./assets/main.css">',
  )
  const counted = [
    put(
      'assets/main.js',
      'import{a as b}from"./shared.js";b();import("./later.js");new Worker("./some.worker.js")',
    ),
    put('assets/shared.js', 'import"./deep.js";export const a=()=>1'),
    put('assets/deep.js', 'export*from"./main.js"'),
    put('assets/ahead.js', 'console.log("ahead")'),
  ]
  put('assets/later.js', 'console.log("later")'.repeat(50))
  put('assets/main.css', 'p{}')
  const worker = put('assets/some.worker.js', 'postMessage(1)')
  const { value, held, numbers } = pageSize(folder)
  expect(value).toBeCloseTo(
    counted.reduce((a, b) => a + b, 0),
    9,
  )
  expect(numbers['worker_gzip_kB']).toBeCloseTo(worker, 9)
  expect(held).toBe(true)
})

test('first page: a page without a script is an error, not 0 kB', () => {
  put('index.html', '<p>nothing</p>')
  expect(() => pageSize(folder)).toThrow(/loads no script/)
})
