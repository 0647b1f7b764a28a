import type { Suspect } from '../../../src/findings/index.ts'
import type { Chance } from './chance.ts'
import type { AxleState, TrueAxle } from './true-axle.ts'
import type { TrueVehicle } from './true-vehicle.ts'

/** One thing that can be wrong with a vehicle, and what it does. */
export interface Fault {
  readonly suspect: Suspect
  /** Of the frequency of its kind, this one's share. Default 1. */
  readonly share?: number
  readonly apply: (vehicle: TrueVehicle, size: number, luck: Chance) => TrueVehicle
}

/** A fault of one axle by what it changes of a copy of that axle's state. */
export function onAxle(
  axle: TrueAxle,
  suspect: Omit<Suspect, 'axle'>,
  change: (state: AxleState, size: number, luck: Chance) => void,
  share = 1,
): Fault {
  return {
    suspect: { kind: suspect.kind, axle: axle.end, side: suspect.side, at: suspect.at },
    share,
    apply: (vehicle, size, luck) => ({
      ...vehicle,
      states: vehicle.states.map((state, i) => {
        if (vehicle.axles[i] !== axle) return state
        const copy = structuredClone(state)
        change(copy, size, luck)
        return copy
      }),
    }),
  }
}
