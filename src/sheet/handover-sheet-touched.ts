import type { JobState, WheelName } from '../job/index.ts'
import { wheelPlace } from '../job/index.ts'
import { type Assembly, assemblyOf, type JointNode } from '../plan/index.ts'
import { Refusal } from '../quantity/index.ts'
import { planCorner } from './plan-corner.ts'
import type { SheetSources } from './sources.ts'

/** What the log says was touched, by what follows from it; names are for people. @source definition */
export interface HandoverTouched {
  /** Joints that place a wheel, carry an adjuster or belong to the steering; adjusters; new springs. */
  readonly geometry: readonly string[]
  readonly steering: readonly string[]
  readonly springs: readonly string[]
  /** New parts with rubber that is clamped at ride height, and new parts that may have a nipple. */
  readonly rubber: readonly string[]
  readonly greased: readonly string[]
  readonly leads: readonly string[]
  readonly heightSensors: readonly string[]
  /** Unions of brake lines. */
  readonly lines: readonly string[]
  readonly callipers: readonly string[]
  readonly wheels: readonly WheelName[]
  /** Models could not be put together, so all of it is told by the log alone. */
  readonly isRough: boolean
}

/**
 * What was touched, by the log and the corner models: what follows from it counts from that.
 *
 * @source common practice, no source
 */
export function handoverTouched({ corners, spec }: SheetSources, state: JobState): HandoverTouched {
  const models = [corners.front, ...(corners.rear ? [corners.rear] : [])]
  const moved = [...new Set(state.moves.map(({ adjuster }) => plain(adjuster)))]
  const assembly = assembled(() => assemblyOf(models.map((corner) => planCorner(corner, spec))))
  if (!assembly)
    return {
      ...nothing,
      geometry: [...moved, ...new Set(state.undone.map(({ joint }) => plain(joint)))],
      isRough: true,
    }
  const joints = state.undone.flatMap(({ joint, wheel }) => {
    const { axle, side } = wheelPlace(wheel)
    return Object.values(assembly.joints).filter(
      (one) => one.name === joint && one.axle === axle && (one.side === side || one.side === null),
    )
  })
  const adjusting = new Set(Object.values(assembly.adjusters).flatMap((one) => one.joints))
  const called = (all: readonly JointNode[]) => [...new Set(all.map((one) => one.called))]
  const joining = (kind: string) =>
    [...new Set(joints.flatMap(({ joins }) => joins))].flatMap((id) =>
      assembly.parts[id]?.kind === kind ? [assembly.parts[id].called] : [],
    )
  const renewed = state.renewed.flatMap(({ part, wheels }) =>
    Object.values(assembly.parts).filter(
      (one) =>
        one.name === part &&
        wheels.some((wheel) => {
          const { axle, side } = wheelPlace(wheel)
          return one.axle === axle && (one.side === side || one.side === null)
        }),
    ),
  )
  const names = (parts: typeof renewed) => [...new Set(parts.map((one) => one.called))]
  const springs = names(renewed.filter(({ id }) => assembly.holds[id]))
  const rubber = renewed.filter(({ id }) =>
    (assembly.touching[id] ?? []).some((joint) => assembly.joints[joint]?.final === 'at ride height'),
  )
  const placing = joints.filter((one) => one.locates || one.steers || adjusting.has(one.id))
  return {
    geometry: [...new Set([...called(placing), ...moved, ...springs])],
    steering: called(joints.filter(({ steers }) => steers)),
    springs,
    rubber: names(rubber),
    greased: names(renewed.filter(({ kind }) => greasable.includes(kind))),
    leads: joining('lead'),
    heightSensors: joining('height-sensor rod'),
    lines: called(joints.filter(({ kind }) => kind === 'hydraulic union')),
    callipers: joining('caliper'),
    wheels: [
      ...new Set(
        state.undone
          .filter(({ joint, wheel }) => corners[wheelPlace(wheel).axle]?.joints[joint]?.kind === 'wheel nuts')
          .map(({ wheel }) => wheel),
      ),
    ],
    isRough: false,
  }
}

const nothing: HandoverTouched = {
  geometry: [],
  steering: [],
  springs: [],
  rubber: [],
  greased: [],
  leads: [],
  heightSensors: [],
  lines: [],
  callipers: [],
  wheels: [],
  isRough: false,
}

/** May have a nipple; the maker says. @source common practice, no source */
const greasable: readonly string[] = ['ball joint', 'kingpin', 'idler arm', 'centre link', 'shackle']

const plain = (id: string) => id.replaceAll('-', ' ')

function assembled(work: () => Assembly): Assembly | null {
  try {
    return work()
  } catch (error) {
    if (error instanceof Refusal) return null
    throw error
  }
}
