import type { AxleEnd } from '../linkage/index.ts'
import { combine, type Measured, rectangular } from '../measure/index.ts'
import type { GaugeContext } from './gauge-context.ts'
import { aboveZero, gaugeRefusal } from './gauge-refusal.ts'
import type { WheelPlace } from './instruments.ts'
import { sourceName } from './source-name.ts'

const PADS_WITHIN = 0.002
const USUAL_TRACK = 1.5
const USUAL_WHEELBASE = 2.6

/**
 * How the floor tilts the vehicle.
 *
 * @source definition
 */
export interface FloorTilt {
  /** Left pad over right pad of one axle, as an angle; + left side high. */
  readonly roll: (axle: AxleEnd) => Measured
  /** Front pads over rear pads, as an angle; + front high. */
  readonly pitch: Measured
  readonly notes: readonly string[]
}

/**
 * Tilt of the floor from the heights of its pads. Only the difference between the two pads of an axle counts for
 * camber, not the slope of one pad. Each pad's height is one error, shared by all that is read over it.
 *
 * @throws {Refusal} `no-floor-size` when a map is given without track or wheelbase; `not-positive`; `not-finite`
 * @source own derivation: docs/methods/floor.md
 * @example floorTilt({ instruments: [] }).roll('front').value // 0
 */
export function floorTilt(context: GaugeContext): FloorTilt {
  const { floor } = context
  const size = (value: number | undefined, usual: number, at: string): number => {
    if (value !== undefined) return aboveZero(value, at)
    if (!floor) return usual
    throw gaugeRefusal(
      'no-floor-size',
      at,
      '',
      `The floor map of ${floor.name} cannot be used without the ${at}.`,
      `Measure the ${at} to the nearest centimetre.`,
    )
  }
  const pad = (place: WheelPlace): Measured =>
    floor
      ? rectangular(floor.spread[place], sourceName('floor', `${floor.id}, ${place}`), floor.heights[place])
      : rectangular(context.padsWithin ?? PADS_WITHIN, sourceName('floor', `not mapped, ${place}`))
  const wheelbase = size(context.wheelbase, USUAL_WHEELBASE, 'wheelbase')
  return {
    roll: (axle) => {
      const track = size(context.track?.[axle], USUAL_TRACK, `${axle} track`)
      return combine([
        { of: pad(`${axle} left`), times: 1 / track },
        { of: pad(`${axle} right`), times: -1 / track },
      ])
    },
    pitch: combine([
      { of: pad('front left'), times: 1 / (2 * wheelbase) },
      { of: pad('front right'), times: 1 / (2 * wheelbase) },
      { of: pad('rear left'), times: -1 / (2 * wheelbase) },
      { of: pad('rear right'), times: -1 / (2 * wheelbase) },
    ]),
    notes: floor
      ? []
      : [
          `The floor is not mapped: each pad is taken as level within ${((context.padsWithin ?? PADS_WITHIN) * 1000).toFixed(1)} mm.`,
        ],
  }
}
