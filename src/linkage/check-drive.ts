import { Refusal } from '../quantity/index.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'

/** No wheel travels so far, m. */
const farthest = 1000
/** A whole turn, rad. */
const turn = 2 * Math.PI

/**
 * What drives a corner or an axle is of a size that can be followed and told; beyond it a sum of squares would lose
 * its meaning and a sentence its sense.
 *
 * @throws {Refusal} `unreachable`
 */
export function checkDrive(
  lengths: Readonly<Record<string, number>>,
  angles: Readonly<Record<string, number>> = {},
): void {
  for (const [at, metres] of Object.entries(lengths))
    if (Math.abs(metres) > farthest) throw tooFar(at, metres, 'further than a kilometre', 'm')
  for (const [at, angle] of Object.entries(angles))
    if (Math.abs(angle) > turn) throw tooFar(at, angle, 'more than a whole turn', 'rad')
}

const tooFar = (at: string, value: number, size: string, unit: string): Refusal<LinkageRefusal> => {
  const given = `${value} ${unit}`
  return new Refusal<LinkageRefusal>({
    code: 'unreachable',
    at,
    given,
    sentence: `${spoken[at] ?? at} is asked to be ${given}, which is ${size}: no wheel can be there.`,
    remedy: 'Look at the number and its unit.',
  })
}

const spoken: Readonly<Record<string, string>> = {
  travel: 'The travel',
  rack: 'The rack',
  heave: 'The heave',
  roll: 'The roll',
  drop: 'The drop arm',
  left: 'The travel of the left wheel',
  right: 'The travel of the right wheel',
}
