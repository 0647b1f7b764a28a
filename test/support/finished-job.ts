import type { Entry } from '../../src/job/index.ts'
import type { SheetSources } from '../../src/sheet/index.ts'
import { readSpec } from '../../src/spec/index.ts'
import { demoFile } from './demo-file.ts'
import { demoSources } from './demo-sources.ts'

type Data = Readonly<Record<string, unknown>>

/** One more entry of a log. */
export const entryOf = (kind: string, data: Data, at = '2026-03-11T10:00:00+01:00'): Entry => ({
  kind,
  data,
  at,
})

/**
 * The demo bus read twice and nothing undone: nothing is open. Its limits are made wide, its play is left out, and the
 * second reading is a proving one at level heights.
 */
export function finishedJob(more: readonly Entry[] = []): SheetSources {
  const bus = demoSources('07')
  const found = bus.job.entries.slice(0, 21).filter(({ kind }) => kind !== 'play')
  const again = found.slice(found.findIndex(({ kind }) => kind === 'round')).map(({ kind, data }) =>
    kind === 'round'
      ? entryOf(kind, { ...data, number: 2, purpose: 'proving' })
      : kind === 'ride height'
        ? entryOf(kind, {
            ...data,
            readings: [String(data['wheel']).startsWith('front') ? '440 mm' : '447 mm'],
          })
        : entryOf(kind, data),
  )
  const file = demoFile('port-unit-07/port-unit-07.spec.json') as { limits: Record<string, Data> }
  const limits = Object.fromEntries(
    Object.keys(file.limits).map((key) => [key, { low: key.includes('caster') ? '-9°' : '-5°', high: '9°' }]),
  )
  const spec = readSpec({ ...file, limits })
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems))
  return { ...bus, spec: spec.value, job: { ...bus.job, entries: [...found, ...again, ...more] } }
}
