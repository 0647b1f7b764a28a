import type { Adjuster } from '../src/adjust/index.ts'
import { type Corner, fitCorner, foreseenOf, nextMeasurements, type Observable } from '../src/corner/index.ts'
import { type SeededRandom, seededRandom, standardUncertainty } from '../src/measure/index.ts'
import { Refusal } from '../src/quantity/index.ts'
import { drawnVehicle } from './drawn-vehicle.ts'
import { moveOf, onVehicle, taken, twelveFor } from './twelve-measurements.ts'

/** What twelve measurements did for the foreseen effect of one move, over many drawn vehicles. */
export interface Coverage {
  readonly vehicles: number
  /** Those whose true effect lay within the stated 95 %. */
  readonly inside: number
  /** Those with a stated standard uncertainty of at most 0.05°. */
  readonly sharp: number
  /** Of the others, those for which a further measurement was named that is expected to shrink it. */
  readonly named: number
  /** Sound fits of which a reading was called gross. */
  readonly falseGross: number
  /** Root mean square of foreseen minus true, and median stated standard uncertainty, rad. */
  readonly rms: number
  readonly stated: number
  /** Effect on the typical corner, its spread before any measurement, rad. */
  readonly effect: number
  readonly before: number
  /** Median and 95th percentile of one fit, ms of processor time. */
  readonly ms: number
  readonly slowMs: number
  readonly measured: readonly string[]
}

const sharp = (0.05 * Math.PI) / 180

/** Draws vehicles, measures them, fits, foresees the move and looks what it truly does. */
export function fitCoverage(
  corner: Corner,
  adjuster: Adjuster,
  { vehicles, seed }: { readonly vehicles: number; readonly seed: number },
): Coverage {
  const { question } = moveOf(corner, adjuster)
  const chosen = twelveFor(corner, question)
  const untouched = foreseenOf(fitCorner({ corner, measurements: [] }), question)
  const random = seededRandom(seed)
  const times: number[] = []
  const spreads: number[] = []
  let [inside, precise, named, falseGross, squares] = [0, 0, 0, 0, 0]
  for (let i = 0; i < vehicles; i++) {
    const { on, truly } = movable(corner, question, random)
    const measurements = chosen.map((one, k) => taken(one, on(one.of), k, random))
    const begin = process.cpuUsage()
    const fit = fitCorner({ corner, measurements })
    const { user, system } = process.cpuUsage(begin)
    times.push((user + system) / 1000)
    const foreseen = foreseenOf(fit, question)
    const off = foreseen.value - truly
    const spread = standardUncertainty(foreseen)
    spreads.push(spread)
    if (Math.abs(off) <= 1.96 * spread) inside++
    if (spread <= sharp) precise++
    else if (nextMeasurements(fit, question)[0]!.after < spread) named++
    if (fit.grossError) falseGross++
    squares += off * off
  }
  return {
    vehicles,
    inside,
    sharp: precise,
    named,
    falseGross,
    rms: Math.sqrt(squares / vehicles),
    stated: quantile(spreads, 0.5),
    effect: untouched.value,
    before: standardUncertainty(untouched),
    ms: quantile(times, 0.5),
    slowMs: quantile(times, 0.95),
    measured: chosen.map(({ of }) => of.says),
  }
}

/** A drawn vehicle on which the move can be made. */
function movable(corner: Corner, question: Observable, random: SeededRandom) {
  for (;;) {
    const on = onVehicle(drawnVehicle(corner, random))
    try {
      return { on, truly: on(question) }
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
    }
  }
}

const quantile = (list: readonly number[], share: number): number =>
  [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(share * list.length))]!
