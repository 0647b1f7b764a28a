import { type JobState, type WheelName, wheelPlace } from '../job/index.ts'
import { type Assembly, keys, type RecordedFact } from '../plan/index.ts'

interface Told {
  readonly entry: number
  readonly facts: readonly RecordedFact[]
}

const carriedBy = {
  'its wheels': 'on its wheels',
  'ramps or pit': 'wheels on ramps or over the pit',
  'slip plates': 'on slip plates',
  jack: 'on a jack',
  stands: 'on stands',
  lift: 'on the lift',
} as const
const seenBy = { stands: 'on stands, seen loaded', lift: 'on the lift, arms locked' } as const
const placedAs = {
  off: 'off',
  'off with another': 'freed',
  'on a hook': 'hung',
  'tied up': 'tied up',
  'in its place': 'in place',
} as const
const heldAs = {
  'by its own joints': 'held by its set',
  'by a jack under the arm': 'held by the jack',
  'in a compressor': 'in the compressor',
  'let down': 'let down',
  'raised to ride height': 'raised',
} as const
const undoneTo = { cracked: 'cracked', 'on a few threads': 'retained', open: 'open' } as const

/**
 * What a job's log says of how far the work has come, as facts of the plan by the assembly's ids, in the log's order.
 * What names nothing that the corner models have is left out: the goal and the bolt book tell it.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function recordedFacts(assembly: Assembly, state: JobState): readonly RecordedFact[] {
  const jointAt = (name: string, wheel: WheelName) => idAt(Object.values(assembly.joints), name, wheel)
  const partAt = (name: string, wheel: WheelName | undefined) =>
    idAt(Object.values(assembly.parts), name, wheel)
  const holdAt = (name: string, wheel: WheelName | undefined) => {
    const id = partAt(name, wheel)
    return id !== null && assembly.holds[id] ? id : null
  }
  const of = <T extends { readonly entry: number }>(
    list: readonly T[],
    facts: (one: T) => readonly (RecordedFact | null)[],
  ): readonly Told[] =>
    list.map((one) => ({ entry: one.entry, facts: facts(one).filter((fact) => fact !== null) }))
  const named = (id: string | null, fact: (id: string) => RecordedFact) => (id === null ? null : fact(id))
  const plain = (key: string, value: string): RecordedFact => ({ is: 'plain', key, value })
  const last = state.rounds.at(-1)
  const told: readonly Told[] = [
    ...of(state.marks, ({ joint, wheel, bodySideToo = false }) => [
      joint && wheel ? named(jointAt(joint, wheel), (id) => ({ is: 'mark', id, bodySideToo })) : null,
    ]),
    ...of(state.asFound, ({ adjuster, wheel }) =>
      (assembly.adjusters[adjusterAt(assembly, adjuster, wheel) ?? '']?.joints ?? []).map((id) => ({
        is: 'mark',
        id,
        bodySideToo: false,
      })),
    ),
    ...of(state.undone, ({ joint, wheel, to }) => [
      named(jointAt(joint, wheel), (id) => ({ is: 'joint', id, to: undoneTo[to] })),
    ]),
    ...of(state.tightenings, ({ joint, wheel, stage, fastener }) => [
      named(jointAt(joint, wheel), (id) => ({
        is: 'joint',
        id,
        to: stage === 'stage' ? 'run up' : stage,
        ...(fastener === 'new' ? { fastener } : {}),
      })),
    ]),
    ...of(state.pins, ({ joint, wheel, pin, legsBent }) => [
      pin === 'new' && legsBent ? named(jointAt(joint, wheel), (id) => ({ is: 'pin', id })) : null,
    ]),
    ...of(state.secondChecks, ({ joint, wheel, passed }) => [
      passed ? named(jointAt(joint, wheel), (id) => ({ is: 'joint', id, to: 'checked' })) : null,
    ]),
    ...of(state.renewed, ({ part, wheels }) =>
      wheels.map((wheel) => named(partAt(part, wheel), (id) => ({ is: 'part', id, to: 'new' }))),
    ),
    ...of(state.placed, ({ part, wheel, where, broken }) => [
      named(partAt(part, wheel), (id) => ({
        is: 'part',
        id,
        to: broken && where !== 'in its place' ? 'broken' : placedAs[where],
      })),
    ]),
    ...of(state.comparisons, ({ part, wheel, when }) => [
      named(partAt(part, wheel), (id) => ({
        is: 'compared',
        id,
        when: when === 'before lifting' ? 'before lifting' : 'beside the old',
      })),
    ]),
    ...of(state.carried, ({ axle, by, seen }) => [
      assembly.axles.includes(axle)
        ? { is: 'support', axle, by: (seen && seenBy[by as keyof typeof seenBy]) || carriedBy[by] }
        : null,
    ]),
    ...of(state.springs, ({ part, wheel, held }) => [
      named(holdAt(part, wheel), (id) => ({ is: 'energy', id, to: heldAs[held] })),
    ]),
    ...of(state.lines, ({ joint, part, wheel, is }) => [
      is === 'lamp seen out'
        ? named(part ? partAt(part, wheel) : null, (id) => plain(keys.lamp(id), 'looked at'))
        : named(joint ? jointAt(joint, wheel) : null, (id) => ({
            is: 'line',
            id,
            to: is === 'capped' ? 'capped' : 'bled',
          })),
    ]),
    ...of(state.pedals, ({ firm }) => [plain(keys.pedal, firm ? 'firm' : 'to pump')]),
    ...of(state.steerings, ({ turned, held }) => [
      plain(keys.steering, turned),
      plain(keys.steeringWheel, held ? 'held, rack counted' : 'free'),
    ]),
    ...of(state.tags, ({ off }) => [plain(keys.tag, off ? 'none' : 'hung')]),
    ...of(state.moves, ({ adjuster, wheel }) => [
      named(adjusterAt(assembly, adjuster, wheel), (id) => ({ is: 'set', adjuster: id })),
    ]),
    ...of(state.heights.filter(({ when }) => when === 'before lifting').slice(0, 1), () => [
      plain(keys.heights, 'recorded'),
    ]),
    ...of(state.pressures ? [state.pressures] : [], () => [plain(keys.pressures, 'set')]),
    ...of(
      last?.entry != null && last.readings.length > 0 ? [{ entry: last.readings.at(-1)!.entry }] : [],
      () => [
        { is: 'read', kind: last!.purpose === 'proving' ? 'proven' : last!.purpose, settled: last!.settled },
      ],
    ),
    ...of(
      state.roadTests.filter(({ when, driven }) => when === 'after the work' && driven),
      () => [plain(keys.road, 'driven')],
    ),
  ]
  return [...told].sort((a, b) => a.entry - b.entry).flatMap(({ facts }) => facts)
}

function idAt(
  all: readonly {
    readonly id: string
    readonly name: string
    readonly axle: string | null
    readonly side: string | null
  }[],
  name: string,
  wheel: WheelName | undefined,
): string | null {
  const found = all.filter((one) => one.name === name)
  if (!wheel) return found.length === 1 ? found[0]!.id : null
  const { axle, side } = wheelPlace(wheel)
  return found.find((one) => one.axle === axle && (one.side === side || one.side === null))?.id ?? null
}

/** An adjuster by its file's name and wheel. */
function adjusterAt({ adjusters }: Assembly, name: string, wheel: WheelName): string | null {
  return adjusters[`${wheel} ${name}`]
    ? `${wheel} ${name}`
    : adjusters[`${wheelPlace(wheel).axle} ${name}`]
      ? `${wheelPlace(wheel).axle} ${name}`
      : null
}
