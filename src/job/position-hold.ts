import { lacksHeight } from './lacks-height.ts'
import type { JointCase, ToDo } from './to-do.ts'

const why = {
  'at ride height':
    'A bonded bush that is tightened anywhere else stays twisted at ride height; it tears within months and holds the vehicle off its height.',
  'wheels straight': 'A rubber rod end that is tightened off the middle pulls the steering to that side.',
  'on the ground': 'In the air the wheel turns with the wrench and does not sit centred.',
}

/**
 * I7 and I2: a joint is final only in its position. What was not written down was not looked at.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function positionHold({ called, kind, required, record, state, wheels }: JointCase): readonly ToDo[] {
  const { final } = record
  if (!final) return []
  const was: readonly string[] = final.position ?? []
  const rule = kind === 'wheel nuts' ? 'I2' : 'I7'
  const found = required.positions
    .filter((position) => {
      const held = rule === 'I2' && position === 'on the ground' && was.includes('wheel held')
      return !was.includes(position) && !held
    })
    .map(
      (position): ToDo => ({
        rule,
        holdsAt: 'run up',
        mend: 'begin anew',
        entries: [final.entry],
        sentence: `${called}: made final ${was.length > 0 ? was.join(', ') : 'in a position that nobody wrote down'}; final counts only ${position}. ${why[position]}`,
        remedy: `Slacken it, bring the vehicle ${position === 'wheels straight' ? 'to wheels straight' : position === 'at ride height' ? 'to ride height' : 'down'}, tighten it again and write down the position.`,
      }),
    )
  const unread = lacksHeight({ state, wheels, record })
  if (found.length === 0 && required.positions.includes('at ride height') && unread.length > 0)
    found.push({
      rule: 'I7',
      holdsAt: 'run up',
      mend: 'elsewhere',
      entries: [final.entry],
      sentence: `${called}: made final at ride height, but no settled ride height of the ${unread.join(' and ')} wheel is recorded since it was opened.`,
      remedy: 'Measure the ride height as the vehicle stands, and write it down.',
    })
  return found
}
