import type { Suspect, SuspectKind } from '../../../src/findings/index.ts'
import type { ReadingName, Side } from '../../../src/linkage/index.ts'
import { type Believed, byPrior } from './by-prior.ts'
import type { FaultJob } from './fault-job.ts'

const degree = Math.PI / 180
type Sense = 'low' | 'right' | 'high'

/** One line of the table: what stands wrong, and the parts that it names. */
interface Line {
  readonly layout: 'double arm' | 'strut'
  readonly sai: Sense
  readonly camber: Sense | 'any'
  readonly included: Sense | 'wrong'
  readonly names: readonly SuspectKind[]
}

/** Common practice, no source: the classical table of SAI, camber and included angle, as the trade teaches it. */
const table: readonly Line[] = [
  { layout: 'double arm', sai: 'low', camber: 'high', included: 'right', names: ['bent lower arm'] },
  { layout: 'double arm', sai: 'high', camber: 'low', included: 'right', names: ['bent upper arm'] },
  { layout: 'double arm', sai: 'right', camber: 'any', included: 'wrong', names: ['bent knuckle'] },
  {
    layout: 'strut',
    sai: 'right',
    camber: 'any',
    included: 'wrong',
    names: ['bent knuckle', 'bent strut tube'],
  },
  {
    layout: 'strut',
    sai: 'low',
    camber: 'high',
    included: 'right',
    names: ['bent lower arm', 'shifted tower'],
  },
  { layout: 'strut', sai: 'high', camber: 'low', included: 'right', names: ['shifted tower'] },
]

/** How far the table is trusted; what does best for it over 800 jobs of other seeds. */
const trust = 0.1

/** What somebody believes who goes by the table: it names the part, else whatever is usual. */
export function byTable(job: FaultJob): readonly Believed[] {
  const prior = byPrior(job)
  const named: { readonly kind: SuspectKind; readonly side: Side }[] = []
  let wrong = false
  for (const side of ['left', 'right'] as const) {
    const camber = senseOf(job, `front ${side} camber`)
    const sai = senseOf(job, `front ${side} sai`)
    if (camber === null) continue
    if (camber.sense !== 'right') wrong = true
    if (sai === null) continue
    const both = camber.off + sai.off
    const included = Math.abs(both) <= 0.75 * degree ? 'right' : 'wrong'
    const layout = job.problem.axles[0]!.corner.layout
    const family = layout === 'strut' ? 'strut' : layout.startsWith('double') ? 'double arm' : null
    for (const line of table)
      if (
        line.layout === family &&
        line.sai === sai.sense &&
        (line.camber === 'any' || line.camber === camber.sense) &&
        line.included === included
      )
        named.push(...line.names.map((kind) => ({ kind, side })))
  }
  if (named.length === 0) {
    // nothing named: likelier sound when nothing stands out of its limits
    const sound = wrong ? 1 : 1.2
    return weighed(prior, ({ kind }) => (kind === 'out of adjustment' ? sound : 1))
  }
  const isNamed = (suspect: Suspect): boolean =>
    named.some(({ kind, side }) => kind === suspect.kind && side === suspect.side && suspect.axle === 'front')
  const mass = prior.reduce((sum, { suspect, belief }) => sum + (isNamed(suspect) ? belief : 0), 0)
  if (mass === 0) return prior
  return weighed(prior, (suspect) => (isNamed(suspect) ? trust / mass : (1 - trust) / (1 - mass)))
}

function weighed(prior: readonly Believed[], by: (suspect: Suspect) => number): readonly Believed[] {
  const all = prior.map(({ suspect, belief }) => ({ suspect, belief: belief * by(suspect) }))
  const sum = all.reduce((total, { belief }) => total + belief, 0)
  return all.map(({ suspect, belief }) => ({ suspect, belief: belief / sum }))
}

/** How a reading stands to its limits; where the sheet has none, to the other side's. */
function senseOf({ problem }: FaultJob, name: ReadingName): { sense: Sense; off: number } | null {
  const read = problem.readings[name]
  if (!read) return null
  const limit = problem.limits[name]
  if (limit) {
    const off = read.value - (limit.low + limit.high) / 2
    return { off, sense: read.value < limit.low ? 'low' : read.value > limit.high ? 'high' : 'right' }
  }
  const other =
    problem.readings[
      name.includes('left')
        ? (name.replace('left', 'right') as ReadingName)
        : (name.replace('right', 'left') as ReadingName)
    ]
  if (!other) return null
  const off = read.value - other.value
  return { off, sense: off < -0.75 * degree ? 'low' : off > 0.75 * degree ? 'high' : 'right' }
}
