import { batchPoses, batchStride, type CornerPoints, mechanism } from '../src/linkage/index.ts'
import { agreement } from './agreement.ts'
import type { Finding } from './finding.ts'
import { interleaved } from './interleaved.ts'
import { fiveLink, wishbone } from './invented-corners.ts'
import { newtonBatch } from './newton-batch.ts'
import { type Compiled, startRival } from './rival.ts'
import { posesPerBatch, sweep } from './sweep.ts'
import { timed } from './timed.ts'

interface Contest {
  readonly id: string
  readonly what: string
  readonly points: CornerPoints
  readonly drives: Float64Array
  readonly kind: 'newton' | 'poses' | 'closed'
  readonly target: number | null
}

const steered = sweep({ travel: 0.05, rack: 0.02 })
const unsteered = sweep({ travel: 0.05, rack: 0 })

const contests: readonly Contest[] = [
  {
    id: 'closed form',
    what: 'Closed form driven by wheel height, with angles, double wishbone',
    points: wishbone,
    drives: steered,
    kind: 'closed',
    target: 1.3,
  },
  {
    id: 'newton',
    what: 'Newton, warm-started, five constraints, double wishbone',
    points: wishbone,
    drives: steered,
    kind: 'newton',
    target: 1.6,
  },
  {
    id: 'newton with angles',
    what: 'Newton, warm-started, with angles, five-link',
    points: fiveLink,
    drives: unsteered,
    kind: 'poses',
    target: 1.6,
  },
]

/** Poses against the same algorithm in C, batch by batch in turn. */
export async function againstC(c: Compiled): Promise<Finding[]> {
  const found: Finding[] = []
  for (const contest of contests) found.push(await raced(c, contest))
  return found
}

async function raced(c: Compiled, { id, what, points, drives, kind, target }: Contest): Promise<Finding> {
  const m = mechanism(points)
  const out = new Float64Array(batchStride * posesPerBatch)
  const run = kind === 'newton' ? newtonBatch(m, drives, out) : () => batchPoses(m, drives, out)
  const rival = startRival(c, m, drives)
  const race = await interleaved({
    ours: () => timed(run),
    theirs: () => rival.batch(kind),
    ourPieces: posesPerBatch,
    theirPieces: posesPerBatch,
  })
  const answered = run()
  if (answered !== posesPerBatch)
    throw new Error(`${answered} of ${posesPerBatch} poses were answered (${id}).`)
  const apart = agreement(out, await rival.results())
  rival.end()
  return {
    id,
    what,
    lines: [
      `ours ${race.ours.toFixed(0)} ns a pose, C ${race.theirs.toFixed(0)} ns, ratio ${race.ratio.toFixed(2)} ` +
        `(quartiles ${race.low.toFixed(2)} to ${race.high.toFixed(2)} of ${race.rounds} rounds; fastest against fastest ${race.fastest.toFixed(2)})`,
      `largest difference of results ${apart.toExponential(1)}`,
    ],
    value: race.ratio,
    unit: '× C',
    target,
    held: target === null ? null : race.ratio <= target,
    numbers: { ...race, apart },
  }
}
