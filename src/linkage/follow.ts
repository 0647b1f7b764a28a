import type { Mechanism } from './mechanism.ts'
import { type Place, settle, stepFrom, type Trip, tangentAt, tripOn, type Way } from './walk.ts'

/** Where following ended. */
export interface Followed {
  /** False: the way turned back, or could not be followed, at `share`. */
  readonly arrived: boolean
  readonly share: number
  readonly state: Float64Array
}

/** Longest and shortest step, in sizes of the corner. */
const longest = 0.08
const shortest = 1e-10
/** Close to a turning point steps shrink with the rate of share, down to this part: two turns may lie close together. */
const rateOfFullStep = 0.3
const leastPart = 0.04
/** Least cosine between the tangents of two neighbouring places. */
const straightness = 0.985

/**
 * Follows the knuckle from `start` (which satisfies the way at share 0) until `share` = end, or to the first
 * turning point of share: there the determinant of the Jacobian passes through zero.
 *
 * Steps of arc length: predictor along the tangent, Newton square to it, so the fold is an ordinary point.
 *
 * @source own derivation: docs/methods/travel-limits.md
 */
export function follow(m: Mechanism, way: Way, start: Float64Array, end: number): Followed {
  const trip = tripOn(m, way)
  const stuck = (at: Place): Followed => ({ arrived: false, share: at.share, state: at.state })
  let here = beginning(trip, start)
  if (!here) return { arrived: false, share: 0, state: start }
  if (end === 0) return { arrived: true, share: 0, state: here.state }
  let h = longest * m.size
  for (let steps = 0; steps < 20000; steps++) {
    const part = Math.min(1, Math.max(leastPart, here.tangent[5]! / rateOfFullStep))
    h = Math.min(h, longest * m.size * part)
    const there = stepFrom(trip, here, h, straightness)
    if (!there) {
      h /= 2
      if (h < shortest * m.size) return stuck(here)
      continue
    }
    const turnedBack = there.tangent[5]! <= 0
    const last = turnedBack ? turningPoint(trip, here, there, h) : { place: there, h }
    if (last.place.share >= end) return landing(trip, here, last.h, end)
    if (turnedBack) return stuck(last.place)
    here = there
    h *= 1.6
  }
  return stuck(here)
}

/** The first place: share 0, tangent towards growing share. */
function beginning(trip: Trip, start: Float64Array): Place | null {
  const state = settle(trip, start, 0)
  if (!state) return null
  const found = tangentAt(trip, state, 0, Float64Array.of(0, 0, 0, 0, 0, 1))
  return found && { state, share: 0, ...found }
}

/** The place between `from` (forward) and `to` (backward), h apart, where share stands still. */
function turningPoint(trip: Trip, from: Place, to: Place, h: number): { place: Place; h: number } {
  let [low, high] = [0, h]
  let [atLow, atHigh] = [from.tangent[5]!, to.tangent[5]!]
  let best = { place: from, h: 0 }
  for (let turn = 0; turn < 80 && high - low > 1e-13 * h; turn++) {
    const guess = low + ((high - low) * atLow) / (atLow - atHigh)
    const middle = turn % 3 === 2 ? (low + high) / 2 : guess
    const place = stepFrom(trip, from, middle, straightness)
    if (!place) break
    if (place.share >= best.place.share) best = { place, h: middle }
    const rate = place.tangent[5]!
    if (Math.abs(rate) < 1e-10) break
    if (rate > 0) {
      low = middle
      atLow = rate
    } else {
      high = middle
      atHigh = rate
    }
  }
  return best
}

/** The place at share = end, between `from` and a step of `h` from it. */
function landing(trip: Trip, from: Place, h: number, end: number): Followed {
  let [low, high] = [0, h]
  let guess = ((end - from.share) * trip.way.worth) / from.tangent[5]!
  let near = from
  for (let turn = 0; turn < 60; turn++) {
    if (!(guess > low && guess < high)) guess = (low + high) / 2
    const place = stepFrom(trip, from, guess, straightness)
    if (!place) break
    near = place
    const miss = (place.share - end) * trip.way.worth
    if (Math.abs(miss) < 1e-9 * trip.m.size) break
    if (miss < 0) low = guess
    else high = guess
    guess -= miss / place.tangent[5]!
  }
  const state = settle(trip, near.state, end)
  return state
    ? { arrived: true, share: end, state }
    : { arrived: false, share: near.share, state: near.state }
}
