import { type Adjuster, settingUnit } from '../adjust/index.ts'
import {
  type Corner,
  changeByMove,
  type FittedCorner,
  fitCorner,
  foreseenOf,
  isWholeAxle,
  nextMeasurements,
  type Observable,
} from '../corner/index.ts'
import { foldJob, type JobState, type WheelName, wheelNames, wheelPlace } from '../job/index.ts'
import { normal, standardUncertainty } from '../measure/index.ts'
import {
  formatAngle,
  formatLength,
  formatTurns,
  metre,
  metricUnits,
  Refusal,
  rad,
  turn,
  type UnitChoice,
} from '../quantity/index.ts'
import { cornerStanding } from './corner-standing.ts'
import type { FitMove, FitPoint, FitSheet, FittedWheel } from './fit-sheet.ts'
import { gaugeContext } from './gauge-setting.ts'
import { type MeasuredOnWheel, measuredOnWheel } from './measured-on-wheel.ts'
import { readRound } from './read-round.ts'
import type { ReadRound } from './recorded-move.ts'
import { roundsOnWheel } from './rounds-on-wheel.ts'
import { sheetNumber } from './sheet-number.ts'
import { cornerAt, type SheetOptions, type SheetSources } from './sources.ts'
import { adjustersStanding } from './wheel-setups.ts'

/** How many further measurements are named for each move. */
const named = 3

/**
 * What a job's measurements say of the geometry of its vehicle: the corner model of each wheel that something was measured
 * on, fitted, with what moves do there and what to measure next. Where nothing was measured yet it says so of the front
 * left wheel, and what would be worth measuring.
 *
 * @source own derivation: docs/methods/fit.md
 */
export function fitOfJob(
  sources: SheetSources,
  { units = metricUnits }: Pick<SheetOptions, 'units'> = {},
): FitSheet {
  const state = foldJob(sources.job.entries)
  const troubles = state.troubles.map(({ sentence, remedy }) => `${sentence} ${remedy}`)
  const told = <T>(work: () => T): T | null => {
    try {
      return work()
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      troubles.push(`${error.sentence} ${error.remedy}`)
      return null
    }
  }
  const rounds = state.rounds
    .filter((round) => round.readings.length > 0)
    .flatMap((round): ReadRound[] => {
      const said = told(() => readRound(round, gaugeContext(sources, state, round)))
      return said ? [{ round, said }] : []
    })
  const measuredOn = wheelNames.filter((wheel) => state.measured.some((fact) => fact.wheel === wheel))
  const wheels: readonly WheelName[] = measuredOn.length > 0 ? measuredOn : ['front left']
  return {
    wheels: wheels.flatMap((wheel) => {
      const corner = cornerAt(sources, wheelPlace(wheel).axle)
      const fitted = corner && told(() => fittedWheel(corner, state, rounds, { wheel, units }))
      return fitted ? [fitted] : []
    }),
    troubles,
  }
}

interface Asked {
  readonly wheel: WheelName
  readonly units: UnitChoice
}

function fittedWheel(
  drawn: Corner,
  state: JobState,
  rounds: readonly ReadRound[],
  { wheel, units }: Asked,
): FittedWheel {
  const corner = cornerStanding(drawn, state, rounds.at(-1)?.round ?? null, wheel)
  const all = [...measuredOnWheel(state, wheel), ...roundsOnWheel(corner, state, rounds, wheel)]
  const fit = fitCorner({ corner, measurements: all.map(({ measurement }) => measurement) })
  return {
    wheel,
    corner: corner.name,
    measured: fit.residuals.map(({ measurement: { of, read }, fitted, used }, i) => ({
      says: of.says,
      entry: all[i]!.entry,
      read: sheetNumber(read, kindOf(of.unit, units)),
      fitted: sheetNumber({ ...read, value: fitted }, kindOf(of.unit, units)).text,
      used,
    })),
    points: pointsOf(fit, units),
    open: fit.undetermined.map(({ sentence }) => sentence),
    grossError: fit.grossError?.sentence ?? null,
    moves: movesOn(corner, fit, { state, rounds, wheel, units, all }),
  }
}

const kindOf = (unit: 'm' | 'rad', units: UnitChoice) =>
  unit === 'm'
    ? ({ kind: 'length', unit: units.length } as const)
    : ({ kind: 'angle', unit: units.angle } as const)

function pointsOf({ unknowns, values, covariance, prior }: FittedCorner, units: UnitChoice): FitPoint[] {
  return unknowns.points.map((name, i) => {
    const number = (axis: number, of: FittedCorner['covariance']) => {
      const at = 3 * i + axis
      return sheetNumber({ ...normal(Math.sqrt(of[at]![at]!), name), value: values[at]! }, kindOf('m', units))
    }
    const three = <T>(of: (axis: number) => T) => [of(0), of(1), of(2)] as const
    return {
      name: name.replaceAll('-', ' '),
      at: three((axis) => number(axis, covariance).text),
      spread: three((axis) => number(axis, covariance).spread),
      before: three((axis) => number(axis, prior.covariance).spread),
    }
  })
}

function movesOn(
  corner: Corner,
  fit: FittedCorner,
  {
    state,
    rounds,
    wheel,
    units,
    all,
  }: Asked & {
    readonly state: JobState
    readonly rounds: readonly ReadRound[]
    readonly all: readonly MeasuredOnWheel[]
  },
): FitMove[] {
  if (isWholeAxle(corner.layout)) return []
  const { adjusters, settings } = adjustersStanding(
    corner,
    rounds.at(-1)?.round.settings ?? state.settings,
    wheelPlace(wheel).side,
  )
  const known = new Set(all.map(({ measurement }) => measurement.of.says))
  return adjusters.map((adjuster) => {
    const [low, high] = adjuster.range
    const from = settings[adjuster.id] ?? (low + high) / 2
    const { amount, by } = oneMove(adjuster, units)
    const to = from + amount <= high ? from + amount : from - amount
    const does = (angle: FitMove['angle']) => changeByMove(angle, { adjuster, from, to: Math.max(to, low) })
    const angle = adjuster.sets ?? mostMoved(fit, does)
    const question = does(angle)
    const kind = kindOf('rad', units)
    const halfWidth = (spread: number) => sheetNumber({ ...normal(spread, 'after'), value: 0 }, kind).spread
    const change = foreseenOf(fit, question)
    return {
      adjuster: adjuster.name,
      angle,
      by: to < from ? `${by} back` : by,
      change: sheetNumber(change, { ...kind, sign: true }),
      next: nextMeasurements(fit, question)
        .filter(
          ({ measurement, after }) => !known.has(measurement.of.says) && after < standardUncertainty(change),
        )
        .slice(0, named)
        .map(({ measurement, after }) => ({
          says: measurement.of.says,
          minutes: measurement.minutes,
          after: halfWidth(after),
        })),
    }
  })
}

/** The angle that a move changes most, where nothing says which it is there for. */
function mostMoved(fit: FittedCorner, does: (angle: FitMove['angle']) => Observable): FitMove['angle'] {
  const hasAxis = fit.unknowns.family === 'double wishbone' || fit.unknowns.family === 'strut'
  const angles: readonly FitMove['angle'][] = hasAxis ? ['camber', 'caster', 'toe'] : ['camber', 'toe']
  const size = (angle: FitMove['angle']) => Math.abs(foreseenOf(fit, does(angle)).value)
  return angles.reduce((most, angle) => (size(angle) > size(most) ? angle : most))
}

/** A move that is easily thought of: a turn, a millimetre, fifteen degrees of a washer, the smallest wedge. */
function oneMove(adjuster: Adjuster, units: UnitChoice): { amount: number; by: string } {
  if (adjuster.kind === 'wedge')
    return {
      amount: adjuster.sizes[0]!,
      by: formatAngle(adjuster.sizes[0]!, { unit: units.angle, digits: 2 }),
    }
  switch (settingUnit(adjuster)) {
    case 'turn':
      return { amount: 1, by: formatTurns(turn(1), { unit: 'turn fraction' }) }
    case 'm':
      return {
        amount: 0.001,
        by: formatLength(metre(0.001), { unit: units.length, digits: units.length === 'in' ? 3 : 0 }),
      }
    case 'rad':
      return { amount: Math.PI / 12, by: formatAngle(rad(Math.PI / 12), { unit: '°', digits: 0 }) }
  }
}
