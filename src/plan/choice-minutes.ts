import { askedOnce } from './asked-once.ts'
import type { Assembly, StandIn } from './assembly.ts'
import type { Choice } from './choice.ts'
import { hasPin } from './has-pin.ts'
import { jointHabits } from './joint-habits.ts'
import { meanMinutes } from './mean-minutes.ts'
import { needsMark } from './needs-mark.ts'
import { seizedRisk } from './seized-risk.ts'
import type { ThreePoint } from './three-point.ts'
import { usualMinutes } from './usual-minutes.ts'

const standInMinutes: Readonly<Record<StandIn, readonly ThreePoint[]>> = {
  'jack under the arm': [usualMinutes['jack under arm'], usualMinutes['jack away']],
  'spring compressor': [usualMinutes.compress, usualMinutes['release compressor']],
  'axle on stands': [usualMinutes['axle on stands'], usualMinutes['axle off stands']],
  'torsion bar unwound': [usualMinutes.unwind, usualMinutes.wind],
  'air let out': [usualMinutes.deflate, usualMinutes['let air in']],
}
/** What borrowing a tool costs that the kit lacks. @source from memory */
const borrowMinutes = 20

/**
 * What a choice costs in minutes of hands: each joint open and closed, parts off and on, energy held and let down.
 * Expected minutes, the risk of a seized joint with its chance. More in a choice never costs less.
 *
 * @param lacks stand-ins whose tool the kit lacks
 * @returns prices of choices; what each joint costs is reckoned once
 * @source own derivation: docs/methods/plan.md
 */
export function choiceMinutes(
  assembly: Assembly,
  lacks: readonly StandIn[] = [],
): (choice: Omit<Choice, 'why'>) => number {
  const joints = Object.values(assembly.joints)
  const vehicle = new Map(joints.map(({ id }) => [id, jointMinutes(assembly, id, false)]))
  const bench = new Map(joints.map(({ id }) => [id, jointMinutes(assembly, id, true)]))
  const handling = meanMinutes(usualMinutes['take off']) + meanMinutes(usualMinutes.fit)
  const raising = meanMinutes(usualMinutes['raise to ride height']) + meanMinutes(usualMinutes['jack away'])
  return (choice) => {
    let sum = choice.off.size * handling + choice.raised.size * raising
    for (const id of choice.open) sum += vehicle.get(id)!
    for (const once of askedOnce.by(assembly, choice.open)) sum += askedOnce.minutes(once)
    for (const id of choice.bench) sum += bench.get(id)!
    for (const [hold, standIn] of Object.entries(choice.standIns)) {
      for (const minutes of standInMinutes[standIn]) sum += meanMinutes(minutes)
      if (choice.letDown.has(hold)) for (const minutes of letDownMinutes(standIn)) sum += meanMinutes(minutes)
      if (lacks.includes(standIn)) sum += borrowMinutes
    }
    return sum
  }
}

function letDownMinutes(standIn: StandIn): readonly ThreePoint[] {
  if (standIn === 'jack under the arm')
    return [usualMinutes['let down with the jack'], usualMinutes['raise the arm']]
  if (standIn === 'spring compressor') return [usualMinutes.compress, usualMinutes['release compressor']]
  return []
}

/** A joint on the bench is in the light and in the vice, and nothing of it has to be final at ride height. */
function jointMinutes(assembly: Assembly, id: string, onBench: boolean): number {
  const joint = assembly.joints[id]!
  const habit = jointHabits[joint.kind]
  const { file } = joint
  const seized = seizedRisk(joint)
  const risk = seized ? seized.chance * meanMinutes(seized.minutes) : 0
  let sum = meanMinutes(file.minutes ?? habit.opens) + meanMinutes(file.minutes ?? habit.closes)
  if (habit.threaded) sum += meanMinutes(habit.finals)
  if (habit.taper) sum += meanMinutes(usualMinutes.crack) + meanMinutes(usualMinutes.free)
  if (hasPin(joint)) sum += meanMinutes(usualMinutes.pin)
  if (joint.red) sum += meanMinutes(usualMinutes['second check'])
  if (joint.kind === 'hydraulic union') sum += meanMinutes(usualMinutes.bleed)
  if (onBench) return 0.7 * (sum + risk)
  return sum + risk + (needsMark(joint) ? meanMinutes(usualMinutes.mark) : 0)
}
