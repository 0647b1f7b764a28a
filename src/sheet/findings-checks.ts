import type { Corner } from '../corner/index.ts'
import type { Findings, NextCheck, RankedSuspect } from '../findings/index.ts'
import { holdFor } from './findings-check-words.ts'
import type { FindingsCheck } from './findings-sheet.ts'

type CornerOf = (axle: string | null | undefined) => Corner | null

/** Checks that are told, best for their minutes first. @source own choice */
const told = 6
/** Below this a check tells next to nothing, nat. @source own choice */
const leastGain = 0.01

/** What to check next, the most telling for its minutes first. */
export function findingsChecks(
  { nextChecks, groups }: Findings,
  cornerOf: CornerOf,
  words: (suspect: RankedSuspect['suspect']) => string,
): readonly FindingsCheck[] {
  const leading = groups.slice(0, 3).flatMap(({ suspects }) => suspects.slice(0, 4))
  return nextChecks
    .filter(({ gain }) => gain >= leastGain)
    .slice(0, told)
    .map((check) => {
      const parted = leading.filter(({ suspect }) => hits(check, suspect)).slice(0, 3)
      return {
        ...checkWords(check, cornerOf),
        tells:
          parted.length > 0 ? `Would tell: ${parted.map(({ suspect }) => words(suspect)).join('; ')}.` : '',
      }
    })
}

/** The check that parts the members of a group, the most telling for its minutes first; null where none does. */
export function separatingCheck(
  suspects: readonly RankedSuspect[],
  { nextChecks }: Findings,
  cornerOf: CornerOf,
): FindingsCheck | null {
  const parting = nextChecks.find((check) => {
    const here = suspects.filter(({ suspect }) => hits(check, suspect)).length
    return here > 0 && here < suspects.length
  })
  return parting && suspects.length > 1 ? { ...checkWords(parting, cornerOf), tells: '' } : null
}

const hits = ({ parts }: NextCheck, one: RankedSuspect['suspect']): boolean =>
  parts.some((a) => a.kind === one.kind && a.axle === one.axle && a.side === one.side && a.at === one.at)

function checkWords({ check, at, minutes }: NextCheck, cornerOf: CornerOf): Omit<FindingsCheck, 'tells'> {
  const [wheel = '', what] = at.split(', ')
  const corner = cornerOf(wheel.split(' ')[0])
  const name = what === undefined ? '' : (corner?.joints[what]?.name ?? corner?.parts[what]?.name ?? what)
  return {
    id: `${check} ${at}`,
    what: check === 'looked at' ? 'Look at it' : `${check.charAt(0).toUpperCase()}${check.slice(1)}`,
    where: [wheel, name.replaceAll('-', ' ')].filter(Boolean).join(', '),
    hold: holdFor(check, corner),
    minutes,
    notes: notesOf(check, wheel, what, corner),
  }
}

/** What hands and eyes can find, by the check: the words of the log. @source common practice, no source */
const finds: Readonly<Record<string, readonly string[]>> = {
  'rock at 12 and 6': ['nothing', 'play', 'play that the brake takes away'],
  'rock at 3 and 9': ['nothing', 'play'],
  'spin the bearing': ['nothing', 'rough', 'noise'],
  'lever at the bush': ['nothing', 'play', 'torn', 'cracked'],
  'looked at': ['nothing', 'bent', 'cracked', 'torn', 'leaking', 'heated or welded', 'corroded through'],
}

function notesOf(
  check: string,
  wheel: string,
  what: string | undefined,
  corner: Corner | null,
): FindingsCheck['notes'] {
  const found = Object.hasOwn(finds, check) ? finds[check] : undefined
  if (!found || !/^(front|rear) (left|right)$/.test(wheel)) return null
  const at: Record<string, string> =
    what === undefined ? {} : corner?.joints[what] ? { joint: what } : { part: what }
  return { finds: found, data: { check, wheel, ...at } }
}
