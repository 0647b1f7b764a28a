import { type Metre, type Newton, type Radian, rad } from '../quantity/index.ts'
import { positive } from './fasten-refusal.ts'

/** Turn after snug. @source definition */
export interface TurnJob {
  readonly preload: Newton
  readonly pitch: Metre
  /** Stiffness of bolt and of the parts it clamps, N/m. */
  readonly boltStiffness: number
  readonly partsStiffness: number
}

/**
 * Turn after snug that stretches bolt and parts to a preload: θ = 2π·F/P·(1/k_b + 1/k_m).
 *
 * @throws {Refusal} `not-positive`, `not-finite`
 * @assumes both stiffnesses known and straight; nobody knows them on a vehicle, so a maker's angle is never judged by it
 * @source Shigley's Mechanical Engineering Design, turn-of-the-nut relation
 * @example turnForPreload({ preload: newton(40000), pitch: mm(1.75), boltStiffness: 4e8, partsStiffness: 1e9 }) // 0.502655
 */
export function turnForPreload({ preload, pitch, boltStiffness, partsStiffness }: TurnJob): Radian {
  const give = 1 / positive(boltStiffness, 'bolt stiffness') + 1 / positive(partsStiffness, 'parts stiffness')
  return rad(((2 * Math.PI * positive(preload, 'preload')) / positive(pitch, 'pitch')) * give)
}
