import type { Adjuster, Limit } from '../../../src/adjust/index.ts'
import type { ExaminedWheel, FindingsProblem, Suspect } from '../../../src/findings/index.ts'
import type { ReadingName, Side } from '../../../src/linkage/index.ts'
import type { Measured } from '../../../src/measure/index.ts'
import type { Chance } from './chance.ts'
import { distanceOf, type Row } from './distance.ts'
import { evidenceOf } from './evidence.ts'
import type { Fault } from './fault.ts'
import type { FaultJob, TwoFaults } from './fault-job.ts'
import { type conditions, shares, sheet } from './frequencies.ts'
import { angleBudget, heightBudget, kitOf, readWith, setBackBudget, turnBudget } from './kit.ts'
import type { Target } from './set-inside.ts'
import { sides } from './true-axle.ts'
import { readingsOf, type TrueVehicle, turnTo, wheels } from './true-vehicle.ts'
import { inRange, knobsOf, settingOf } from './turn-knobs.ts'

type Targets = Readonly<Partial<Record<ReadingName, Target>>>

/** How well a mark is read, in the adjuster's unit; null of what has no mark. */
function markOf(adjuster: Adjuster): number | null {
  const degree = Math.PI / 180
  switch (adjuster.kind) {
    case 'eccentric':
      return 4 * degree
    case 'offset sleeve':
      return 8 * degree
    case 'thread':
    case 'sub-frame shift':
      return null
    case 'wedge':
    case 'shims':
      return adjuster.step / 20
    default:
      return adjuster.step / 2
  }
}

/** A vehicle that is to be read, and the story behind it. */
interface ToRead {
  readonly seed: number
  readonly luck: Chance
  readonly vehicle: TrueVehicle
  readonly healthy: TrueVehicle
  readonly targets: Targets
  readonly picked: Fault | null
  readonly second: TwoFaults | null
  readonly size: number
  readonly story: keyof typeof shares.history
  readonly condition: keyof typeof conditions
  readonly ids: readonly string[]
}

/** Reads a vehicle with a kit, looks at it and drives it. */
export function readJob({
  seed,
  luck,
  vehicle,
  healthy,
  targets,
  picked,
  second,
  size,
  story,
  condition,
  ids,
}: ToRead): FaultJob {
  const kit = kitOf(luck)
  const truths = readingsOf(vehicle)
  const limits = limitsOf(targets, luck)
  const rows: Row[] = []
  const read = readWith(luck)
  const readings: Partial<Record<ReadingName, Measured>> = {}
  for (const [name, truth] of Object.entries(truths.angles) as [ReadingName, number][]) {
    const [end, side, angle] = name.split(' ') as ['front', Side, 'camber']
    const sai = truths.angles[`front ${side} sai`] ?? 0
    const budget = angleBudget(kit, { wheel: `${end} ${side}`, angle, sai })
    if (!budget || luck.happens(0.03)) continue
    rows.push({ name, read: budget })
    readings[name] = read(truth, budget)
  }
  const heights: Partial<Record<ExaminedWheel, Measured>> = {}
  if (luck.happens(shares.heights))
    for (const wheel of wheels) {
      if (!vehicle.axles.some(({ end }) => wheel.startsWith(end))) continue
      const budget = heightBudget(kit, wheel)
      rows.push({ name: `${wheel} height`, read: budget })
      heights[wheel] = read(truths.heights[wheel], budget)
    }
  const turns: Partial<Record<Side, Measured>> = {}
  if (kit.sweep && luck.happens(shares.turns))
    for (const side of sides) {
      const truth = turnTo(vehicle, side)
      if (truth === null || turnTo(healthy, side) === null) continue
      const budget = turnBudget(side, luck)
      rows.push({ name: `turn ${side}`, read: budget })
      turns[side] = read(truth, budget)
    }
  let setBack: Measured | null = null
  if (kit.strings && luck.happens(shares.setBack)) {
    const budget = setBackBudget(luck)
    rows.push({ name: 'set-back', read: budget })
    setBack = read(truths.setBack, budget)
  }
  const marked = luck.happens(shares.marksRecorded)
  const recorded = marked ? markOf : () => null
  const suspect: Suspect | null =
    picked?.suspect ??
    (condition === 'misadjusted' ? { kind: 'out of adjustment', axle: null, side: null, at: null } : null)
  const drawnEvidence = evidenceOf(
    {
      vehicle,
      truth: suspect,
      size,
      readings: truths,
      wanted: (wheel, angle) => targets[`${wheel} ${angle}`]?.middle ?? 0,
    },
    luck,
  )
  // hands would find either of two; here nobody looked
  const evidence = second ? { checks: [], play: [], treads: [], road: [] } : drawnEvidence
  const worn = evidence.play.find(
    ({ joint, wheel }) =>
      suspect?.kind === 'worn ball joint' &&
      joint === suspect.at &&
      wheel === `${suspect.axle} ${suspect.side}`,
  )
  const play = worn ? (size / 0.75 / 0.00022) ** 2 : 0
  const far = (faulty: TrueVehicle): number =>
    distanceOf({
      healthy,
      faulty,
      rows,
      markSpread: (_, knob) => recorded(knob.adjuster),
      sheetGives: (name) => limits[name] !== undefined,
      play,
    })
  return {
    seed,
    problem: {
      axles: vehicle.axles.map(({ end, corner }, i) => ({
        end,
        corner,
        settings: settingsFound(vehicle, i, { recorded, luck }),
      })),
      readings,
      heights,
      turns,
      setBack,
      limits,
      heightLimits: heightLimitsOf(vehicle, luck),
      ...evidence,
    },
    truth: suspect ?? 'healthy',
    size,
    distance: picked === null ? 0 : far(second ? second.first(healthy, size) : vehicle),
    also: second && { suspect: second.suspect, distance: far(second.second(healthy)) },
    layout:
      ids[
        Math.max(
          0,
          vehicle.axles.findIndex(({ end }) => end === suspect?.axle),
        )
      ]!,
    history: story,
    vehicle,
  }
}

function limitsOf(targets: Targets, luck: Chance): Partial<Record<ReadingName, Limit>> {
  const limits: Partial<Record<ReadingName, Limit>> = {}
  const has = new Map<string, boolean>()
  for (const [name, { middle, within }] of Object.entries(targets) as [ReadingName, Target][]) {
    const [end, , angle] = name.split(' ') as [string, string, keyof typeof sheet]
    const key = `${end} ${angle}`
    if (!has.has(key)) has.set(key, luck.happens(sheet[angle].given))
    if (has.get(key)) limits[name] = { low: middle - within, high: middle + within, preferred: middle }
  }
  return limits
}

function heightLimitsOf(vehicle: TrueVehicle, luck: Chance): Partial<Record<ExaminedWheel, Limit>> {
  if (!luck.happens(sheet.height.given)) return {}
  const limits: Partial<Record<ExaminedWheel, Limit>> = {}
  for (const wheel of wheels)
    if (vehicle.axles.some(({ end }) => wheel.startsWith(end)))
      limits[wheel] = { low: -sheet.height.within, high: sheet.height.within }
  return limits
}

/** As-found marks: where somebody looked, as well as such a mark can be read. */
function settingsFound(
  vehicle: TrueVehicle,
  i: number,
  { recorded, luck }: { readonly recorded: (adjuster: Adjuster) => number | null; readonly luck: Chance },
): FindingsProblem['axles'][number]['settings'] {
  const settings: Record<Side | 'both', Record<string, number | null>> = { left: {}, right: {}, both: {} }
  for (const knob of knobsOf(vehicle.axles[i]!)) {
    const spread = recorded(knob.adjuster)
    const true_ = settingOf(vehicle.states[i]!, knob)
    settings[knob.on][knob.adjuster.id] = spread === null ? null : inRange(knob, true_ + luck.normal(spread))
  }
  return settings
}
