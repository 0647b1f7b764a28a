import { brakeTakesAway, type CheckChance, checkChances } from './check-chances.ts'
import type { CheckFound, ExaminedWheel } from './findings-problem.ts'
import type { Suspect } from './suspect.ts'

const sound = /^(nothing|as it should be)$/
const rodEnd = /tie|drag|toe-link/

/**
 * Log chance of what hands and eyes found, if this suspect is the cause.
 *
 * @source own derivation: docs/methods/findings.md
 */
export const logOfChecks = (checks: readonly CheckFound[], suspect: Suspect): number =>
  checks.reduce((sum, check) => sum + logOfCheck(check, suspect), 0)

function logOfCheck(check: CheckFound, suspect: Suspect): number {
  if (check.found.length === 0) return 0
  const shows = !check.found.every((one) => sound.test(one))
  const here = check.wheel !== null && wheelOf(suspect) === check.wheel
  const { chance, seen } = chanceOf(check, suspect, here)
  if (!chance) return 0
  const p = seen ? chance.there : chance.not
  const log = Math.log(shows ? p : 1 - p)
  if (!shows || !check.check.startsWith('rock')) return log
  const taken = check.found.some((one) => one.includes('brake takes away'))
  const bearing = seen && suspect.kind === 'loose wheel bearing'
  const away = bearing ? brakeTakesAway.bearing : brakeTakesAway.other
  return log + Math.log(taken ? away : 1 - away)
}

const wheelOf = ({ axle, side }: Suspect): ExaminedWheel | null =>
  axle !== null && side !== null ? `${axle} ${side}` : null

interface Sight {
  /** Null for a check that tells nothing about any suspect. */
  readonly chance: CheckChance | null
  /** Whether the suspect is what the check looks at. */
  readonly seen: boolean
}

function chanceOf({ check, joint, part }: CheckFound, suspect: Suspect, here: boolean): Sight {
  const { kind, at } = suspect
  const isRodEnd = kind === 'worn ball joint' && at !== null && rodEnd.test(at)
  const sight = (name: keyof typeof checkChances, seen: boolean): Sight => ({
    chance: checkChances[name],
    seen: seen && here,
  })
  switch (check) {
    case 'rock at 12 and 6':
      if (kind === 'loose wheel bearing') return sight('rock at 12 and 6, wheel bearing', true)
      if (kind === 'worn kingpin') return sight('rock at 12 and 6, kingpin', true)
      return sight('rock at 12 and 6, ball joint', kind === 'worn ball joint' && !isRodEnd)
    case 'rock at 3 and 9':
      if (kind === 'loose wheel bearing') return sight('rock at 3 and 9, wheel bearing', true)
      return sight('rock at 3 and 9, rod end', isRodEnd)
    case 'lever at the bush':
      return sight('lever at the bush', kind === 'collapsed bush' && (joint === null || joint === at))
    case 'spin the bearing':
      return sight('spin the bearing', kind === 'loose wheel bearing')
    case 'free movement of the steering wheel':
      return {
        chance: checkChances['free movement of the steering wheel, rod end'],
        seen: isRodEnd && suspect.axle === 'front',
      }
    case 'looked at':
      return part === null ? { chance: null, seen: false } : lookedAt(part, suspect, here)
    default:
      return { chance: null, seen: false }
  }
}

/** What a look at a part shows of a suspect. */
function lookedAt(part: string, { kind, at }: Suspect, here: boolean): Sight {
  const sight = (name: keyof typeof checkChances, seen: boolean): Sight => ({
    chance: checkChances[name],
    seen: seen && here,
  })
  if (/tie-rod|drag-link|steering/.test(part))
    return {
      chance: checkChances['looked at, steering'],
      seen: kind === 'bent steering arm or tie rod' && (here || at === null),
    }
  if (/arm|link|rod/.test(part))
    return sight(
      'looked at, arm or link',
      (kind === 'bent link' && at === part) ||
        (kind === 'bent upper arm' && part === 'upper-arm') ||
        (kind === 'bent lower arm' && /^(lower|trailing)-arm$/.test(part)),
    )
  if (/knuckle/.test(part)) return sight('looked at, knuckle', kind === 'bent knuckle')
  if (/strut/.test(part)) return sight('looked at, strut', kind === 'bent strut tube')
  if (/coil|spring|torsion/.test(part)) return sight('looked at, spring', kind === 'sagged spring')
  if (/beam|axle/.test(part)) return sight('looked at, beam', kind === 'bent axle or beam')
  if (/tower|body|frame|member/.test(part))
    return sight('looked at, mounting', kind === 'shifted tower' || kind.startsWith('cross-member'))
  return { chance: null, seen: false }
}
