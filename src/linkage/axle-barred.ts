import { Refusal } from '../quantity/index.ts'
import { type AxlePlace, linkRows, movedPlace } from './axle-place.ts'
import { axleState, designPlace } from './axle-state.ts'
import { type AxleFollowed, between } from './follow-axle.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { SolidAxle } from './solid-axle.ts'
import type { AxleDrive } from './solid-axle-points.ts'
import { solveLinear } from './solve-linear.ts'

/** The refusal for an axle's drive past the end of the way: what is in the way, by how much, where the way ends. */
export function axleBarred(
  a: SolidAxle,
  from: AxleDrive,
  to: AxleDrive,
  end: AxleFollowed,
): Refusal<LinkageRefusal> {
  const { at, why } = reason(a, to, end)
  const last = between(from, to, end.share)
  return new Refusal<LinkageRefusal>({
    code: 'unreachable',
    at,
    given: spoken(to),
    sentence: `The axle cannot be at ${spoken(to)}: ${why}. The way ends at ${spoken(last)}.`,
    remedy: 'Ask for less than that, or measure this rod and the points it joins again.',
  })
}

const signed = (value: number, unit: string): string => `${value > 0 ? '+' : ''}${value.toFixed(2)} ${unit}`
const degrees = (angle: number): string => signed((angle * 180) / Math.PI, '°')
const spoken = ({ heave, roll, drop }: AxleDrive): string =>
  [
    `heave ${signed(1000 * heave, 'mm')}`,
    ...(roll !== 0 ? [`roll ${degrees(roll)}`] : []),
    ...(drop !== 0 ? [`drop arm ${degrees(drop)}`] : []),
  ].join(', ')

function reason(a: SolidAxle, to: AxleDrive, end: AxleFollowed): { at: string; why: string } {
  const place = end.state?.place ?? designPlace(a)
  // where the drive asked for can be looked at, the rod's lack is told there; else where the way ends
  const there = axleState(a, to, place)
  const bar = 'at' in there && there.at === end.bar?.at ? there : (end.bar ?? { at: 'location' as const })
  const upright = Math.abs(a.tilt + to.roll) >= Math.PI / 2
  if (bar.at === 'location') return a.leaf || upright ? rolled : shortLink(a, to, place)
  const { rod, length } = bar
  const [way, by] = length < rod.shortest ? ['short', rod.shortest - length] : ['long', length - rod.longest]
  const name = bar.at === 'tieRod' ? 'tie rod' : 'drag link'
  return { at: bar.at, why: `there the ${name} is too ${way} by about ${(1000 * by).toFixed(1)} mm` }
}

const rolled = {
  at: 'location',
  why: 'the line of its hubs comes to its steepest before that',
}

/** The link that misses most where the others, height and tilt are kept and it comes closest. */
function shortLink(a: SolidAxle, { heave, roll }: AxleDrive, from: AxlePlace): { at: string; why: string } {
  const tries = a.links.map((_, free) => {
    const place = closest(a, heave, roll, from, free)
    const { error } = linkRows(a, place, heave, roll)
    const others = Math.hypot(...error.map((e, i) => (i === free ? 0 : e)))
    const { length } = a.links[free]!
    const missing = Math.sqrt(Math.max(0, length * length + 2 * length * error[free]!)) - length
    return { free, missing, cost: Math.abs(missing) + 100 * others }
  })
  const best = tries.reduce((x, y) => (y.cost < x.cost ? y : x))
  const by = (1000 * Math.abs(best.missing)).toFixed(1)
  return {
    at: `links.${best.free}`,
    why: `there link ${best.free + 1} is too ${best.missing > 0 ? 'short' : 'long'} by about ${by} mm`,
  }
}

/** Weighted least squares of the errors by Levenberg–Marquardt, one link free to miss. */
function closest(a: SolidAxle, heave: number, roll: number, from: AxlePlace, free: number): AxlePlace {
  const weight = (i: number): number => (i === free ? 1e-2 : i === 5 ? a.size : 1) ** 2
  const costOf = (p: AxlePlace): number =>
    linkRows(a, p, heave, roll).error.reduce((sum, e, i) => sum + weight(i) * e * e, 0)
  let place = from
  let cost = costOf(place)
  let damping = 1e-3
  for (let turn = 0; turn < 60 && damping < 1e8; turn++) {
    const { error, jacobian } = linkRows(a, place, heave, roll)
    const normal = new Float64Array(36)
    const step = new Float64Array(6)
    const scale = (k: number): number => (k < 3 ? 1 : a.size)
    for (let i = 0; i < 6; i++)
      for (let j = 0; j < 6; j++) {
        const row = jacobian[6 * i + j]! / scale(j)
        step[j]! -= weight(i) * row * error[i]!
        for (let k = 0; k < 6; k++) normal[6 * j + k]! += (weight(i) * row * jacobian[6 * i + k]!) / scale(k)
      }
    for (let j = 0; j < 6; j++) normal[7 * j]! += damping
    if (solveLinear(normal, step, 6) === 0) break
    const next = movedPlace(
      place,
      step.map((x, k) => x / scale(k)),
    )
    const after = costOf(next)
    if (after < cost) {
      place = next
      damping /= 5
      if (cost - after < 1e-12 * cost) break
      cost = after
    } else damping *= 4
  }
  return place
}
