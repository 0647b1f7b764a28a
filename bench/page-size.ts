import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Finding } from './finding.ts'

/** kB = 1000 bytes. */
const target = 200

/** Size of the scripts that the first page loads before it shows anything: those of index.html and what they import. */
export function pageSize(folder: string): Finding {
  const html = readFileSync(join(folder, 'index.html'), 'utf8')
  const named = [...html.matchAll(/<(?:script|link)\b[^>]*>/g)]
    .map(([tag]) => tag)
    .filter((tag) => /^<script/.test(tag) || /rel="?modulepreload/.test(tag))
    .flatMap((tag) => /(?:src|href)="?([^"\s>]+)/.exec(tag)?.[1] ?? [])
  const scripts = new Map<string, { plain: number; packed: number }>()
  const workers = new Map<string, number>()
  const waiting = named.map((path) => join(folder, path))
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (scripts.has(file)) continue
    const code = readFileSync(file)
    scripts.set(file, { plain: code.length, packed: gzipSync(code, { level: 9 }).length })
    const text = code.toString('utf8')
    // static imports only: what is loaded by a call comes later
    for (const [, path] of text.matchAll(/(?:^|[;}\s])(?:import|export)\b[^;()]*?["'](\.[^"']+\.js)["']/g))
      waiting.push(join(file, '..', path!))
    for (const [, path] of text.matchAll(/["'`](?:[\w./-]*\/)?([\w.-]*worker[\w.-]*\.js)["'`]/gi)) {
      const worker = join(file, '..', path!)
      if (existsSync(worker)) workers.set(worker, gzipSync(readFileSync(worker), { level: 9 }).length)
    }
  }
  if (scripts.size === 0) throw new Error(`${folder}/index.html loads no script.`)
  const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0) / 1000
  const value = sum([...scripts.values()].map((each) => each.packed))
  const plain = sum([...scripts.values()].map((each) => each.plain))
  const later = sum([...workers.values()])
  return {
    id: 'page',
    what: "First page's initial script, gzip",
    lines: [
      `${value.toFixed(1)} kB in ${scripts.size} ${scripts.size === 1 ? 'file' : 'files'} (${plain.toFixed(1)} kB before gzip, level 9); the worker, loaded beside it, ${later.toFixed(1)} kB`,
    ],
    value,
    unit: 'kB',
    target,
    held: value <= target,
    numbers: { gzip_kB: value, plain_kB: plain, worker_gzip_kB: later },
  }
}
