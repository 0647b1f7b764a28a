import type { Assembly, HoldNode, JointNode, StandIn } from './assembly.ts'
import type { Choice } from './choice.ts'
import { factOf } from './fact-of.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'
import { whereOf } from './where-of.ts'

/**
 * What a state has undone, as a choice: joints that were touched, parts that are off, springs that something else
 * holds.
 *
 * @param fresh what would be undone from the sound vehicle: says which joints are undone on the bench
 * @param stages from which to which stage a joint counts, as `jointStageOf` tells them
 * @source own derivation: docs/methods/plan.md
 */
export function choiceIn(
  assembly: Assembly,
  state: State,
  fresh: Choice | null,
  [low, high]: readonly [number, number],
): Choice {
  const is = (key: string) => factOf(state, key)
  const isOff = (id: string) => ['off', 'freed', 'hung', 'broken'].includes(is(keys.part(id)))
  const off = Object.keys(assembly.parts).filter(isOff)
  const open: string[] = []
  const bench: string[] = []
  for (const joint of Object.values(assembly.joints)) {
    const stage = jointStageOf(is(keys.joint(joint.id)))
    const unpinned = stage === 6 && is(keys.pin(joint.id)) === 'out'
    if (stage < low || (stage > high && !unpinned)) continue
    const both = joint.joins.every(isOff)
    const inStrut =
      joint.kind === 'strut top nut' ||
      (joint.kind === 'seat' &&
        joint.joins
          .flatMap((part) => assembly.holds[part] ?? [])
          .some((hold) => isStrutSpring(assembly, hold)))
    // A coil’s seats are parted and met on the vehicle, unless it stands in a strut.
    const benched =
      inStrut || (both && isForBench(joint) && (fresh !== null || stage > 4 || pressed.includes(joint.kind)))
    // Undone while one of its parts is on the vehicle it was undone there, whatever was meant to be.
    const onVehicle = !both && !inStrut && stage < 5
    if ((fresh?.bench.has(joint.id) && !onVehicle) || (benched && !fresh?.open.has(joint.id)))
      bench.push(joint.id)
    else open.push(joint.id)
  }
  const holds = Object.values(assembly.holds).filter(({ id }) => is(keys.energy(id)) !== 'held by its set')
  const raised = Object.values(assembly.parts)
    .filter(({ kind, side }) => kind === 'wheel' && side)
    .map(whereOf)
    .filter((where) => is(keys.arm(where)) === 'raised to ride height')
  const why = 'it is undone as recorded'
  return {
    open: new Set(open),
    bench: new Set(bench),
    off: new Set(off),
    standIns: Object.fromEntries(holds.map((hold) => [hold.id, standInOf(assembly, state, hold)])),
    letDown: new Set(holds.filter(({ id }) => is(keys.energy(id)) === 'let down').map(({ id }) => id)),
    raised: new Set(raised),
    why: Object.fromEntries(
      [
        ...open,
        ...bench,
        ...off,
        ...holds.flatMap(({ id }) => [`hold ${id}`, `let down ${id}`]),
        ...raised.map((where) => `raised ${where}`),
      ].map((id) => [id, why]),
    ),
  }
}

const isForBench = ({ kind, final }: JointNode) => kind !== 'seat' && final !== 'on the ground'
/** Where it is not known what was meant, the rest is closed where it was most likely opened: on the vehicle. */
const pressed: readonly JointNode['kind'][] = ['press fit', 'retaining ring']

/** What stands in for a hold, told by how its energy is and what the state says beside it. */
function standInOf(assembly: Assembly, state: State, hold: HoldNode): StandIn {
  const energy = factOf(state, keys.energy(hold.id))
  if (energy === 'held by the jack') return 'jack under the arm'
  if (energy === 'in the compressor') return 'spring compressor'
  if (hold.stores === 'torsion bar' && hold.standIns.includes('torsion bar unwound'))
    return 'torsion bar unwound'
  if (hold.stores === 'air') return 'air let out'
  if (factOf(state, keys.axleStands(hold.axle)) === 'on stands') return 'axle on stands'
  if (factOf(state, keys.arm(whereOf(hold))) === 'let down') return 'jack under the arm'
  if (isStrutSpring(assembly, hold) || factOf(state, keys.swapped(hold.id)) !== 'no')
    return 'spring compressor'
  return hold.standIns[0]!
}
