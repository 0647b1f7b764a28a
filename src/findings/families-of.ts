import { familiesOfAxle } from './families-of-axle.ts'
import type { Family } from './family.ts'
import type { ExaminedWheel, FindingsProblem } from './findings-problem.ts'
import type { Knob } from './knobs.ts'
import { scaledDisplacement } from './scaled-displacement.ts'
import { scaledWhole } from './scaled-whole.ts'
import type { Suspect } from './suspect.ts'
import type { VehicleWay } from './vehicle-way.ts'

/** Everything that can be wrong with this vehicle, or with the way it was read, but for the adjusters alone. @source own derivation: docs/methods/findings.md */
export function familiesOf(problem: FindingsProblem, knobs: readonly Knob[]): readonly Family[] {
  return [
    ...problem.axles.flatMap(familiesOfAxle),
    ...knobs.flatMap((knob, i) => knobFaults(knob, i)),
    ...ofReading(problem),
  ]
}

/** An adjuster that is not where it was left, or whose washer was put in the other way round. */
function knobFaults(knob: Knob, number: number): readonly Family[] {
  const { adjuster, end, on } = knob
  const side = on === 'both' ? null : on
  const way: VehicleWay = { axles: { [end]: scaledWay(knob) } }
  const family = (kind: Suspect['kind']): Family => ({
    suspect: { kind, axle: end, side, at: adjuster.id },
    share: 1,
    main: way,
    also: [],
    late: true,
    knob: number,
  })
  if (adjuster.kind === 'wedge' || adjuster.kind === 'offset sleeve') return []
  return [
    family('adjuster slipped or at its stop'),
    ...(adjuster.kind === 'eccentric'
      ? [reversed(knob, family('eccentric fitted the wrong way round'))]
      : []),
  ]
}

/** Whose mark was seen: it stands as far on the other side. Whose was not: it may stand anywhere, as after a slip. */
function reversed(knob: Knob, unseen: Family): Family {
  if (knob.known === null) return unseen
  const main: VehicleWay = { axles: { [knob.end]: scaledWay({ ...knob, half: -2 * knob.at }) } }
  const { knob: _, ...rest } = unseen
  return { ...rest, main, size: { mean: 0.001, spread: 0.0001, low: 0.0005, high: 0.0015, back: 0 } }
}

/** Sizes of adjusters count in half ranges: a size of 1 mm of the prior is one of them. */
const halfRange = 1000

function scaledWay({ way, half }: Knob) {
  const k = half * halfRange
  return {
    ...(way.left ? { left: scaledDisplacement(way.left, k) } : {}),
    ...(way.right ? { right: scaledDisplacement(way.right, k) } : {}),
    ...(way.whole ? { whole: scaledWhole(way.whole, k) } : {}),
  }
}

const wheels: readonly ExaminedWheel[] = ['front left', 'front right', 'rear left', 'rear right']

function ofReading({ readings }: FindingsProblem): readonly Family[] {
  const nowhere = { axle: null, side: null } as const
  const out = (end: string, k: number): VehicleWay => ({
    pads: Object.fromEntries(
      wheels
        .filter((wheel) => wheel.startsWith(end))
        .map((wheel) => [wheel, wheel.endsWith('left') ? k : -k]),
    ),
  })
  const pulls: Suspect = { kind: 'tyre pulls', axle: 'front', side: null, at: null }
  const list: Family[] = [{ suspect: pulls, share: 1, main: {}, also: [], late: true }]
  if (Object.keys(readings).length === 0) return list
  return [
    ...list,
    {
      suspect: { kind: 'gauge not zeroed', ...nowhere, at: 'camber gauge' },
      share: 1,
      main: { camberGauge: 1 },
      also: [],
      late: true,
    },
    {
      suspect: { kind: 'gauge not zeroed', ...nowhere, at: 'steer gauge' },
      share: 0.5,
      // the plates' zero is coarser than a level's
      main: { steerGauge: 3 },
      also: [],
      late: true,
    },
    {
      suspect: { kind: 'floor not level', ...nowhere, at: null },
      share: 1,
      main: out('front', 0.5),
      also: [
        { way: out('rear', 0.5), spread: 0.004 },
        { way: { pads: { 'front left': 1, 'front right': 1 } }, spread: 0.003 },
      ],
      late: true,
    },
  ]
}
