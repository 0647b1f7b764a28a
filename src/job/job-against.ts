import { type Adjuster, settingUnit } from '../adjust/index.ts'
import { adjustersOf, axleAdjustersOf, type Corner, closestName, type Problem } from '../corner/index.ts'
import type { Kit } from '../kit/index.ts'
import type { Job } from './entry.ts'
import { foldJob } from './fold-job.ts'
import { fromAgainst } from './from-against.ts'
import type { JobState, Setting } from './job-state.ts'
import { standOf } from './stand-of.ts'
import type { WheelName } from './wheel-name.ts'

/** The files that a job names, as far as they are at hand. @source definition */
export interface Beside {
  readonly front?: Corner | undefined
  readonly rear?: Corner | undefined
  readonly kit?: Kit | undefined
}

/** Which kind of gauge stands in which member of an entry. */
const gaugeKinds: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  inclinometer: { gauge: ['inclinometer'] },
  'strings and rule': { rule: ['rule'], strings: ['strings'] },
  'tape on a scribed line': { tape: ['tape'] },
  'steer sweep': { gauge: ['inclinometer'], steerGauge: ['turn plates', 'string and protractor'] },
  'run-out': { gauge: ['dial indicator'] },
  'ride height by rule': { rule: ['rule'] },
  'dial indicator': { gauge: ['dial indicator'] },
}

/**
 * What a job says that the files beside it do not have: a gauge the kit lacks or of another kind, a bay
 * without a floor map, an adjuster, joint or part the corner lacks, a setting in another adjuster's unit.
 *
 * @source definition
 */
export function jobAgainst(job: Job, beside: Beside): readonly Problem[] {
  const state = foldJob(job.entries)
  return [...(beside.kit ? kitProblems(state, beside.kit) : []), ...cornerProblems(state, beside)]
}

const lacks = (field: string, what: string, name: string, known: readonly string[]): Problem => {
  const close = closestName(name, known)
  return {
    field,
    wrong: `${what} "${name}".`,
    right: close ? `"${close}", if that is meant` : `one of ${known.map((k) => `"${k}"`).join(', ')}`,
  }
}

function kitProblems(state: JobState, kit: Kit): readonly Problem[] {
  const found: Problem[] = []
  const facts = [...state.heights, ...state.play, ...state.rounds.flatMap((round) => round.readings)]
  for (const { entry, observation } of [...facts].sort((a, b) => a.entry - b.entry))
    for (const [member, kinds] of Object.entries(gaugeKinds[observation.method] ?? {})) {
      const id = (observation as unknown as Readonly<Record<string, string | undefined>>)[member]
      if (id === undefined) continue
      const field = `entries[${entry}].data.${member}`
      const fit = Object.keys(kit.gauges).filter((g) => kinds.includes(kit.gauges[g]!.kind))
      const gauge = Object.hasOwn(kit.gauges, id) ? kit.gauges[id] : undefined
      if (!gauge) found.push(lacks(field, `The kit "${kit.name}" has no gauge`, id, fit))
      else if (!kinds.includes(gauge.kind))
        found.push({
          field,
          wrong: `"${id}" is a gauge of the kind “${gauge.kind}”; this reading needs “${kinds.join('” or “')}”.`,
          right: fit.length > 0 ? fit.map((g) => `"${g}"`).join(' or ') : `a kit with a ${kinds[0]}`,
        })
    }
  for (const { entry, wrench, adapter } of state.tightenings) {
    const wrenches = Object.keys(kit.wrenches ?? {})
    if (wrench !== undefined && !wrenches.includes(wrench))
      found.push(
        lacks(`entries[${entry}].data.wrench`, `The kit "${kit.name}" has no wrench`, wrench, wrenches),
      )
    const adapters = Object.keys(kit.adapters ?? {})
    if (adapter && !adapters.includes(adapter.adapter))
      found.push(
        lacks(
          `entries[${entry}].data.adapter.adapter`,
          `The kit "${kit.name}" has no adapter`,
          adapter.adapter,
          adapters,
        ),
      )
  }
  const bay = state.bay
  if (bay && !Object.hasOwn(kit.floors ?? {}, bay.bay))
    found.push(
      lacks(
        `entries[${bay.entry}].data.bay`,
        `The kit "${kit.name}" has no floor map`,
        bay.bay,
        Object.keys(kit.floors ?? {}),
      ),
    )
  return found
}

function cornerProblems(state: JobState, { front, rear }: Beside): readonly Problem[] {
  const found: Problem[] = []
  const cornerOf = (wheel: string) => (wheel.startsWith('front') ? front : rear)
  for (const { entry, wheel, adjuster } of [...state.asFound, ...state.moves]) {
    const corner = cornerOf(wheel)
    const field = `entries[${entry}].data.adjuster`
    if (corner && !Object.hasOwn(corner.adjusters, adjuster))
      found.push(
        lacks(
          field,
          `The corner model "${corner.name}" has no adjuster`,
          adjuster,
          Object.keys(corner.adjusters),
        ),
      )
  }
  for (const { entry, wheels, member, name } of named(state))
    for (const corner of new Set(wheels.map(cornerOf))) {
      const known = corner && Object.keys(member === 'joint' ? corner.joints : corner.parts)
      if (known && !known.includes(name))
        found.push(
          lacks(
            `entries[${entry}].data.${member}`,
            `The corner model "${corner.name}" has no ${member}`,
            name,
            known,
          ),
        )
    }
  for (const fact of state.measured) {
    const corner = cornerOf(fact.wheel)
    const names: Readonly<Record<string, unknown>> = { ...fact }
    for (const member of ['point', 'from', 'to'] as const) {
      const name = names[member]
      if (corner && typeof name === 'string' && !Object.hasOwn(corner.points, name))
        found.push(
          lacks(
            `entries[${fact.entry}].data.${member}`,
            `The corner model "${corner.name}" has no point`,
            name,
            Object.keys(corner.points),
          ),
        )
    }
  }
  for (const setting of state.settings) {
    const corner = cornerOf(setting.wheel)
    const adjuster =
      corner && [...adjustersOf(corner), ...axleAdjustersOf(corner)].find((a) => a.id === setting.adjuster)
    if (adjuster)
      found.push(...settingProblems(state, setting, adjuster), ...fromAgainst(state, setting.wheel, adjuster))
  }
  return found
}

/** Every joint and part that the log names, at which wheels. */
function named(state: JobState) {
  const facts: readonly {
    readonly entry: number
    readonly wheel?: WheelName | undefined
    readonly wheels?: readonly WheelName[] | undefined
    readonly joint?: string | undefined
    readonly part?: string | undefined
  }[] = [
    ...state.play,
    ...state.renewed,
    ...state.handChecks,
    ...state.marks,
    ...state.undone,
    ...state.tightenings,
    ...state.pins,
    ...state.secondChecks,
    ...state.deviations,
    ...state.placed,
    ...state.comparisons,
    ...state.springs,
    ...state.lines,
    ...state.photos,
    ...state.extraWork,
  ]
  return facts
    .flatMap((fact) =>
      (['joint', 'part'] as const).flatMap((member) => {
        const name = fact[member]
        const wheels = fact.wheels ?? (fact.wheel ? [fact.wheel] : [])
        return name === undefined ? [] : [{ entry: fact.entry, wheels, member, name }]
      }),
    )
    .sort((a, b) => a.entry - b.entry)
}

function settingProblems(state: JobState, setting: Setting, adjuster: Adjuster): readonly Problem[] {
  const of = (fact: { wheel: string; adjuster: string }) =>
    fact.wheel === setting.wheel && fact.adjuster === setting.adjuster
  const [stand] = standOf({ settings: [setting], adjusters: [adjuster], wheel: setting.wheel })
  const last = [...state.asFound.filter(of), ...state.moves.filter(of)].at(-1)
  const field = `entries[${last?.entry ?? 0}].data`
  const unit = settingUnit(adjuster)
  if (setting.unit !== null && setting.unit !== unit)
    return [
      {
        field,
        wrong: `“${adjuster.name}” is set in ${{ rad: 'degrees', m: 'millimetres', turn: 'turns' }[unit]}.`,
        right: {
          rad: 'a setting such as "12°"',
          m: 'a setting such as "3 mm"',
          turn: 'a setting such as "5/12 turn"',
        }[unit],
      },
    ]
  const [low, high] = adjuster.range
  const room = 1e-9 * (high - low)
  if (stand?.setting != null && (stand.setting < low - room || stand.setting > high + room))
    return [
      {
        field,
        wrong: `“${adjuster.name}” of the ${setting.wheel} wheel would stand beyond the end of its range.`,
        right: 'a setting inside the range of the corner model, or a range that is true',
      },
    ]
  return []
}
