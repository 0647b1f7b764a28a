import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { cpus } from 'node:os'
import { readCorner } from '../src/corner/index.ts'
import { readJob } from '../src/job/index.ts'
import { readKit } from '../src/kit/index.ts'
import { type Paper, paperHtml, paperPdf } from '../src/proof/index.ts'
import { proofSheetFrom } from '../src/sheet/index.ts'
import { readSpec } from '../src/spec/index.ts'
import type { Finding } from './finding.ts'
import { printed } from './printed.ts'

const examples = new URL('../examples/', import.meta.url)
const { resolve } = createRequire(import.meta.url)
const repeats = 21
/** Milliseconds for one PDF of the demo job. */
const target = 300

/**
 * The proof sheet of the demo bus on paper: worked out, laid out as a page, written as a PDF.
 *
 * @returns 0; a missed target is no failure
 */
export async function paperBench(): Promise<0> {
  console.log(
    `Node ${process.versions.node}, ${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores\n`,
  )
  const sources = {
    job: whole(readJob, 'port-unit-07/port-unit-07.job.json'),
    corners: { front: whole(readCorner, 'port-unit-07/front.corner.json'), rear: null },
    spec: whole(readSpec, 'port-unit-07/port-unit-07.spec.json'),
    kit: whole(readKit, 'port-kit.kit.json'),
  }
  const font = (weight: string) => readFileSync(resolve(`pdfmake/fonts/Roboto/Roboto-${weight}.ttf`))
  const how = { size: 'A4', fonts: { normal: font('Regular'), bold: font('Medium') }, created: null } as const
  const times: Record<'sheet' | 'page' | 'PDF', number[]> = { sheet: [], page: [], PDF: [] }
  for (let i = 0; i <= repeats; i++) {
    const started = performance.now()
    const sheet = proofSheetFrom(sources)
    times.sheet.push(performance.now() - started)
    const seal = { head: 'Not sealed', isGood: false, lines: [], fingerprint: null, code: 'a'.repeat(200) }
    const paper: Paper = { sheet, seal, version: '0' }
    const laid = performance.now()
    paperHtml(paper, 'A4')
    times.page.push(performance.now() - laid)
    const wrote = performance.now()
    await paperPdf(paper, how)
    times.PDF.push(performance.now() - wrote)
  }
  const median = (all: readonly number[]) => [...all.slice(1)].sort((a, b) => a - b)[(repeats - 1) / 2]!
  const value = median(times.PDF)
  const finding: Finding = {
    id: 'paper',
    what: 'The proof sheet of the demo bus as a PDF',
    lines: (['sheet', 'page', 'PDF'] as const).map(
      (part) =>
        `${part}: ${median(times[part]).toFixed(0)} ms in the middle of ${repeats}, the first ${times[part][0]!.toFixed(0)} ms`,
    ),
    value,
    unit: 'ms',
    target,
    held: value < target,
    numbers: { sheet: median(times.sheet), page: median(times.page), pdf: value, first: times.PDF[0]! },
  }
  console.log(printed(finding))
  return 0
}

function whole<T>(
  read: (json: unknown) => { ok: true; value: T } | { ok: false; problems: unknown },
  path: string,
): T {
  const reading = read(JSON.parse(readFileSync(new URL(path, examples), 'utf8')))
  if (!reading.ok) throw new Error(`${path}: ${JSON.stringify(reading.problems)}`)
  return reading.value
}
