import { combine, type Measured, rectangular } from '../measure/index.ts'
import type { KnownPlay } from './gauge-context.ts'
import type { WheelPlace } from './instruments.ts'
import { sourceName } from './source-name.ts'

/**
 * An angle read through a worn joint: it may stand anywhere within the joint's play, so half the swing goes into
 * its spread as a box. The swing is taken with its own spread added, since it can only be wider than its best half.
 *
 * @param swing whole play as an angle
 * @param joint names the play; what is read through the same joint shares it
 * @source own derivation: docs/methods/camber-inclinometer.md
 * @example standardUncertainty(widenedByPlay(exact(0), { swing: exact(0.02), joint: 'lower ball joint' })) // 0.0057735
 */
export function widenedByPlay(
  measured: Measured,
  { swing, joint }: { readonly swing: Measured; readonly joint: string },
): Measured {
  return combine([
    { of: measured, times: 1 },
    { of: rectangular(Math.max(0, swing.value) / 2, sourceName('play', joint)), times: 1 },
    { of: { ...swing, value: 0 }, times: 1 / 2 },
  ])
}

/** Widens by each known play of this wheel and angle. */
export function widenedByKnownPlay(
  measured: Measured,
  plays: readonly KnownPlay[] | undefined,
  { wheel, moves }: { readonly wheel: WheelPlace; readonly moves: KnownPlay['moves'] },
): { measured: Measured; notes: readonly string[] } {
  const found = (plays ?? []).filter((play) => play.wheel === wheel && play.moves === moves)
  let widened = measured
  for (const [i, { swing }] of found.entries())
    widened = widenedByPlay(widened, { swing, joint: `${wheel}, ${moves}${i > 0 ? `, ${i + 1}` : ''}` })
  return {
    measured: widened,
    notes: found.length > 0 ? [`The play found at the ${wheel} is part of the spread of its ${moves}.`] : [],
  }
}
