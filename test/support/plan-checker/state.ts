import type { Goal } from '../../../src/plan/index.ts'
import type { Vehicle } from './vehicle.ts'

/** How a joint is. */
export interface TieIs {
  readonly is: 'closed' | 'cracked' | 'retained' | 'open' | 'started' | 'run up' | 'final' | 'checked'
  /** Its taper has let go. */
  readonly parted: boolean
  readonly pin: 'old' | 'out' | 'new'
  /** A fastener that may be used once is a new one. */
  readonly fresh: boolean
  readonly mark: 'none' | 'joint' | 'body side too'
  readonly touched: boolean
  /** Final since before something else of its axle came open that moves an angle: of work that was done by then. */
  readonly earlier: boolean
}

/** How a part is. `out`: the old one was free of all that stays; `loose`: put back, and held by nothing yet. */
export interface PartIs {
  readonly is: 'fitted' | 'hung' | 'off'
  readonly out: boolean
  readonly loose: boolean
  readonly compared: 'no' | 'before' | 'beside'
}

/** What carries an axle. */
export type Carried = 'wheels' | 'ramps' | 'jack' | 'stands' | 'seen loaded' | 'lift' | 'locked'

/** The whole state as plan.md lists it. */
export interface State {
  readonly ties: Readonly<Record<string, TieIs>>
  readonly parts: Readonly<Record<string, PartIs>>
  readonly carried: Readonly<Record<string, Carried>>
  readonly settled: Readonly<Record<string, boolean>>
  /** Of a corner, or of an axle where one spring serves both: what the arm does. */
  readonly arms: Readonly<Record<string, 'free' | 'jack' | 'down' | 'ride'>>
  readonly energy: Readonly<Record<string, 'set' | 'jack' | 'compressor' | 'down'>>
  readonly steering: 'straight' | 'left lock' | 'right lock'
  readonly wheelHeld: boolean
  readonly airbagSafe: boolean
  readonly chocked: boolean
  readonly tail: boolean
  /** On ramps, over the pit or on the drive-on lift: all wheels stand level. */
  readonly level: boolean
  readonly levelling: boolean
  readonly pedal: 'firm' | 'soft'
  readonly lines: Readonly<Record<string, 'open' | 'to bleed' | 'bled'>>
  /** Leads that were unplugged, with their lamp not yet looked at since. */
  readonly lamps: Readonly<Record<string, 'due' | 'seen'>>
  readonly rod: 'fine' | 'due'
  readonly setters: Readonly<Record<string, 'as it was' | 'disturbed' | 'set'>>
  readonly pressures: boolean
  readonly heights: 'unknown' | 'recorded'
  readonly angles: Readonly<Record<string, 'as they were' | 'due' | 'provisional' | 'proven'>>
  readonly toeSet: Readonly<Record<string, boolean>>
  readonly leanSet: Readonly<Record<string, boolean>>
  readonly everLifted: boolean
  readonly clearance: boolean
  readonly wheelWasOff: boolean
  readonly card: boolean
  readonly fitToDrive: boolean
  readonly driven: boolean
  readonly handedOver: boolean
}

/** A sound vehicle that stands on its wheels. */
export function soundVehicle(vehicle: Vehicle): State {
  const each = <T>(ids: Iterable<string>, value: T): Record<string, T> =>
    Object.fromEntries([...ids].map((id) => [id, value]))
  const { axles } = vehicle
  return {
    ties: each(vehicle.ties.keys(), {
      is: 'closed',
      parted: false,
      pin: 'old',
      fresh: false,
      mark: 'none',
      touched: false,
      earlier: false,
    }),
    parts: each(vehicle.parts.keys(), { is: 'fitted', out: false, loose: false, compared: 'no' }),
    carried: each(axles, 'wheels'),
    settled: each(axles, true),
    arms: {},
    energy: each(
      vehicle.stores.map(({ id }) => id),
      'set',
    ),
    steering: 'straight',
    wheelHeld: false,
    airbagSafe: false,
    chocked: false,
    tail: false,
    level: false,
    levelling: true,
    pedal: 'firm',
    lines: {},
    lamps: {},
    rod: 'fine',
    setters: each(
      vehicle.setters.map(({ id }) => id),
      'as it was',
    ),
    pressures: false,
    heights: 'unknown',
    angles: each(axles, 'as they were'),
    toeSet: each(axles, false),
    leanSet: each(axles, false),
    everLifted: false,
    clearance: false,
    wheelWasOff: false,
    card: false,
    fitToDrive: false,
    driven: false,
    handedOver: false,
  }
}

/** What a rule looks at: the state before and after an action, and what the job is for. */
export interface Moment {
  readonly vehicle: Vehicle
  readonly goal: Goal
  readonly before: State
  readonly after: State
  readonly action: import('../../../src/plan/index.ts').Action
}
