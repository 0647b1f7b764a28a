import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { type Reading, readCorner } from '../../src/corner/index.ts'
import { readJob } from '../../src/job/index.ts'
import { readKit } from '../../src/kit/index.ts'
import type { SheetSources } from '../../src/sheet/index.ts'
import { readSpec } from '../../src/spec/index.ts'

const root = fileURLToPath(new URL('../../examples/', import.meta.url))
const json = (path: string): unknown => JSON.parse(readFileSync(root + path, 'utf8'))

function whole<T>(reading: Reading<T>): T {
  if (reading.ok) return reading.value
  throw new Error(JSON.stringify(reading.problems))
}

/** A demo job with its models, read from `examples/` by the same doors as everywhere. */
export function demoSources(unit: '07' | '12'): SheetSources {
  const folder = `port-unit-${unit}/`
  return {
    job: whole(readJob(json(`${folder}port-unit-${unit}.job.json`))),
    corners: { front: whole(readCorner(json(`${folder}front.corner.json`))), rear: null },
    spec: whole(readSpec(json(`${folder}port-unit-${unit}.spec.json`))),
    kit: whole(readKit(json('port-kit.kit.json'))),
  }
}
