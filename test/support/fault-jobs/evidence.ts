import type {
  CheckFound,
  ExaminedWheel,
  FindingsProblem,
  PlayFound,
  RoadAnswer,
  Suspect,
  TreadFound,
} from '../../../src/findings/index.ts'
import { type Measured, normal } from '../../../src/measure/index.ts'
import type { Chance } from './chance.ts'
import { shares } from './frequencies.ts'
import { sides } from './true-axle.ts'
import { type TrueReadings, type TrueVehicle, wheels } from './true-vehicle.ts'

const degree = Math.PI / 180
const mm = 0.001
type Evidence = Pick<FindingsProblem, 'checks' | 'play' | 'treads' | 'road'>

/** What a job's true state is made of, for hands, eyes and the road. */
export interface Seen {
  readonly vehicle: TrueVehicle
  /** Null of a vehicle without a fault. */
  readonly truth: Suspect | null
  readonly size: number
  /** Without any gauge's error. */
  readonly readings: TrueReadings
  /** Camber and toe that the sheet prefers. */
  readonly wanted: (wheel: ExaminedWheel, angle: 'camber' | 'toe') => number
}

/**
 * Chances that a check shows something: with the fault there, and without (no source: the generator's own, from common
 * practice of what such a check can see).
 */
const chances = {
  'rock, ball joint': [0.75, 0.03],
  'rock, kingpin': [0.85, 0.05],
  'rock, bearing': [0.8, 0.02],
  'rock across, bearing': [0.6, 0.02],
  'rock across, tie rod end': [0.75, 0.03],
  'lever at the bush': [0.75, 0.05],
  'spin the bearing': [0.5, 0.04],
  'looked at, arm': [0.5, 0.02],
  'looked at, knuckle': [0.2, 0.01],
  'looked at, strut': [0.35, 0.02],
  'looked at, steering': [0.5, 0.02],
  'looked at, spring': [0.2, 0.01],
  'looked at, beam': [0.3, 0.01],
} as const

/** Draws what hands, eyes and the road found. */
export function evidenceOf(seen: Seen, luck: Chance): Evidence {
  return {
    checks: luck.happens(shares.handChecks) ? checksOf(seen, luck) : [],
    play: luck.happens(shares.play) ? playOf(seen, luck) : [],
    treads: luck.happens(shares.treads) ? treadsOf(seen, luck) : [],
    road: luck.happens(shares.road) ? roadOf(seen, luck) : [],
  }
}

const isAt = (truth: Suspect | null, wheel: ExaminedWheel): boolean =>
  truth !== null && `${truth.axle} ${truth.side}` === wheel

/** Ball joints of a corner by their names in the file, and whether each is a tie rod's end. */
function ballJoints(vehicle: TrueVehicle, end: string): { joint: string; rod: boolean }[] {
  const axle = vehicle.axles.find((one) => one.end === end)
  return Object.entries(axle?.corner.joints ?? {}).flatMap(([joint, { kind, at }]) =>
    /^tapered stud|^pinch bolt/.test(kind) &&
    at &&
    /^(lower-outer|upper-outer|tie-outer|link-5-outer)$/.test(at)
      ? [{ joint, rod: at === 'tie-outer' || at === 'link-5-outer' }]
      : [],
  )
}

function checksOf({ vehicle, truth }: Seen, luck: Chance): CheckFound[] {
  const list: CheckFound[] = []
  const sees = (what: keyof typeof chances, there: boolean): boolean =>
    luck.happens(chances[what][there ? 0 : 1])
  const [rocked, levered, looked, spun] = [0.9, 0.6, 0.6, 0.5].map((share) => luck.happens(share))
  for (const { end, corner } of vehicle.axles)
    for (const side of sides) {
      const wheel: ExaminedWheel = `${end} ${side}`
      const here = isAt(truth, wheel)
      const kind = here ? truth!.kind : null
      const none = { joint: null, part: null }
      const isRod = ballJoints(vehicle, end).some(({ joint, rod }) => rod && joint === truth?.at)
      if (rocked) {
        const bearing = sees('rock, bearing', kind === 'loose wheel bearing')
        const joint = sees('rock, ball joint', kind === 'worn ball joint' && !isRod)
        const pin =
          corner.points['kingpin-lower'] !== undefined && sees('rock, kingpin', kind === 'worn kingpin')
        const found: string[] = []
        if (joint || pin) found.push('play')
        if (bearing) found.push(luck.happens(0.6) ? 'play that the brake takes away' : 'play')
        list.push({
          check: 'rock at 12 and 6',
          wheel,
          ...none,
          found: found.length > 0 ? [...new Set(found)] : ['nothing'],
        })
        const across =
          sees('rock across, bearing', kind === 'loose wheel bearing') ||
          (end === 'front' && sees('rock across, tie rod end', kind === 'worn ball joint' && isRod))
        list.push({ check: 'rock at 3 and 9', wheel, ...none, found: [across ? 'play' : 'nothing'] })
      }
      if (levered)
        for (const [joint, { bush, at, side: only }] of Object.entries(corner.joints)) {
          if (!bush?.bonded || at === undefined || (only !== undefined && only !== side)) continue
          const bad = sees('lever at the bush', kind === 'collapsed bush' && truth!.at === joint)
          list.push({
            check: 'lever at the bush',
            wheel,
            joint,
            part: null,
            found: [bad ? luck.oneOf(['torn', 'loose']) : 'nothing'],
          })
        }
      if (spun) {
        const bad = sees('spin the bearing', kind === 'loose wheel bearing')
        list.push({
          check: 'spin the bearing',
          wheel,
          ...none,
          found: [bad ? luck.oneOf(['rough', 'noise']) : 'nothing'],
        })
      }
      if (looked)
        for (const [part, what, there] of lookedAt(corner.parts, kind, truth)) {
          const bad = sees(what, there)
          list.push({
            check: 'looked at',
            wheel,
            joint: null,
            part,
            found: [bad ? (what === 'looked at, spring' ? 'cracked' : 'bent') : 'nothing'],
          })
        }
    }
  return list
}

function lookedAt(
  parts: Readonly<Record<string, { readonly kind: string }>>,
  kind: string | null,
  truth: Suspect | null,
): (readonly [part: string, what: keyof typeof chances, there: boolean])[] {
  const list: (readonly [string, keyof typeof chances, boolean])[] = []
  for (const [part, { kind: is }] of Object.entries(parts)) {
    const link = kind === 'bent link' && truth!.at === part
    if (part === 'tie-rod') list.push([part, 'looked at, steering', kind === 'bent steering arm or tie rod'])
    else if (is === 'arm') {
      const arm = part === 'upper-arm' ? 'bent upper arm' : 'bent lower arm'
      list.push([part, 'looked at, arm', link || kind === arm])
    } else if (is === 'rod' && /link|radius/.test(part)) list.push([part, 'looked at, arm', link])
    else if (is === 'knuckle') list.push([part, 'looked at, knuckle', kind === 'bent knuckle'])
    else if (is === 'strut') list.push([part, 'looked at, strut', kind === 'bent strut tube'])
    else if (is === 'spring') list.push([part, 'looked at, spring', kind === 'sagged spring'])
    else if (is === 'axle beam') list.push([part, 'looked at, beam', kind === 'bent axle or beam'])
  }
  return list
}

function playOf({ vehicle, truth, size }: Seen, luck: Chance): PlayFound[] {
  const limit = luck.happens(0.5) ? luck.oneOf([1, 1.5, 2]) * mm : null
  return sides.flatMap((side) =>
    ballJoints(vehicle, 'front').flatMap(({ joint, rod }): PlayFound[] => {
      const wheel: ExaminedWheel = `front ${side}`
      const worn = isAt(truth, wheel) && truth!.kind === 'worn ball joint' && truth!.at === joint
      if (rod && !worn && luck.happens(0.6)) return []
      const true_ = worn ? size / luck.between(0.5, 1) : Math.abs(luck.normal(0.2 * mm))
      const u = 0.06 * mm
      const value = Math.max(0, true_ + luck.normal(u))
      return [{ wheel, joint, swing: normal(u, `reading: play ${wheel} ${joint}`, value), limit }]
    }),
  )
}

/** A wheel that leans out wears its outer shoulder, one that leans in its inner; toe-in the outer, toe-out the inner. */
function treadsOf({ vehicle, readings, wanted }: Seen, luck: Chance): TreadFound[] {
  const driven = Math.exp(luck.normal(0.5))
  const pressure = luck.normal(0.35 * mm)
  const depth = (wheel: ExaminedWheel, at: string, true_: number): Measured => {
    const u = 0.15 * mm
    return normal(u, `reading: tread ${wheel} ${at}`, Math.max(0, true_ + luck.normal(u)))
  }
  return wheels.flatMap((wheel): TreadFound[] => {
    if (!vehicle.axles.some(({ end }) => wheel.startsWith(end))) return []
    const camber = readings.angles[`${wheel} camber`]! - wanted(wheel, 'camber')
    const toe = readings.angles[`${wheel} toe`]! - wanted(wheel, 'toe')
    const slope = driven * ((0.45 * mm * camber) / degree + (1 * mm * toe) / degree) + luck.normal(0.25 * mm)
    const level = luck.between(3.5, 7) * mm
    const half = Math.max(-level, Math.min(level, slope)) / 2
    return [
      {
        wheel,
        outer: depth(wheel, 'outer', level - half - pressure / 2),
        middle: depth(wheel, 'middle', level + pressure / 2),
        inner: depth(wheel, 'inner', level + half - pressure / 2),
      },
    ]
  })
}

const chanceOf = (x: number): number => 1 / (1 + Math.exp(-x))

function roadOf({ truth, readings, vehicle }: Seen, luck: Chance): RoadAnswer[] {
  const of = (name: keyof TrueReadings['angles']): number => readings.angles[name] ?? 0
  const camber = of('front left camber') - of('front right camber')
  const caster = of('front left caster') - of('front right caster')
  const tyre = truth?.kind === 'tyre pulls' ? luck.sign() * luck.between(0.6, 1.5) : luck.normal(0.12)
  // half a degree is felt: towards the more positive camber and the less positive caster
  const pull = camber / degree / 0.7 - caster / degree / 0.7 + tyre * 1.4
  const left = luck.happens(chanceOf(5 * (pull - 0.9)))
  const right = !left && luck.happens(chanceOf(5 * (-pull - 0.9)))
  const list: RoadAnswer[] = [
    { question: 'pulls to the left', answer: left },
    { question: 'pulls to the right', answer: right },
  ]
  if (left || right) {
    const swaps = luck.happens(Math.abs(tyre * 1.4) > Math.abs(pull) / 2 ? 0.85 : 0.06)
    list.push({ question: 'pull swaps with the front wheels', answer: swaps })
  }
  const rear = vehicle.axles.some(({ end }) => end === 'rear')
  const thrust = rear ? (of('rear left toe') - of('rear right toe')) / 2 : 0
  const turned = ((of('front left toe') - of('front right toe')) / 2 - thrust) * 16
  list.push({
    question: 'steering wheel off centre',
    answer: luck.happens(chanceOf((Math.abs(turned) / degree - 5) / 1.2)),
  })
  const loose = truth !== null && /worn|loose/.test(truth.kind)
  list.push(
    { question: 'wanders', answer: luck.happens(loose ? 0.45 : 0.1) },
    {
      question: 'knocks over bumps',
      answer: luck.happens(loose ? 0.5 : truth?.kind === 'collapsed bush' ? 0.5 : 0.07),
    },
    { question: 'steering does not return', answer: luck.happens(0.04) },
  )
  return list
}
