import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface, type Interface } from 'node:readline'
import type { Mechanism } from '../src/linkage/index.ts'
import { writeNumbers } from './numbers-file.ts'

const source = join(import.meta.dirname, 'c', 'rival.c')
const flags = ['-O3', '-march=native']

/** The compiled program, the compiler's own first line, and the flags given to it. */
export interface Compiled {
  readonly folder: string
  readonly compiler: string
  readonly flags: string
}

/** Compiles the rival; a sentence why not, where there is no compiler or it fails. */
export function compileRival(): Compiled | string {
  const version = spawnSync('cc', ['--version'], { encoding: 'utf8' })
  if (version.error || version.status !== 0)
    return 'There is no C compiler named cc here, so nothing is raced against C.'
  const folder = mkdtempSync(join(tmpdir(), 'axlewright-bench-'))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  const run = spawnSync('cc', [...flags, '-o', join(folder, 'rival'), source, '-lm'], { encoding: 'utf8' })
  if (run.status !== 0)
    return `cc could not compile bench/c/rival.c, so nothing is raced against C: ${run.stderr}`
  return { folder, compiler: version.stdout.split('\n')[0] ?? '', flags: flags.join(' ') }
}

/** The C program with one corner, waiting for its next batch. */
export interface Rival {
  /** Runs one batch. @returns nanoseconds, by its own clock */
  readonly batch: (name: 'newton' | 'poses' | 'closed') => Promise<number>
  /** What the last batch wrote, eight numbers a pose. */
  readonly results: () => Promise<Float64Array>
  readonly end: () => void
}

/** Starts the compiled program on a corner and its drives. */
export function startRival({ folder }: Compiled, m: Mechanism, drives: Float64Array): Rival {
  const numbers = join(folder, 'numbers')
  const dump = join(folder, 'results')
  writeNumbers(numbers, m, drives)
  const child = spawn(join(folder, 'rival'), [numbers], { stdio: ['pipe', 'pipe', 'inherit'] })
  const lines = createInterface({ input: child.stdout })
  const poses = drives.length / 2
  return {
    async batch(kind) {
      const [ns, answered] = (await ask(child, lines, kind)).split(' ').map(Number)
      if (answered !== poses) throw new Error(`C answered ${answered} of ${poses} poses (${kind}).`)
      return ns!
    },
    async results() {
      await ask(child, lines, `dump ${dump}`)
      const bytes = readFileSync(dump)
      return new Float64Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength))
    },
    end() {
      child.stdin.end()
    },
  }
}

function ask(child: ChildProcess, lines: Interface, words: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const onEnd = () => reject(new Error(`The C program ended while it was asked for "${words}".`))
    lines.once('close', onEnd)
    lines.once('line', (line) => {
      lines.off('close', onEnd)
      resolve(line)
    })
    child.stdin!.write(`${words}\n`)
  })
}
