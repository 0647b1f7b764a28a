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
export function positionHold({ called, kind, required, record, state, wheel }: JointCase): readonly ToDo[] {
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
        entries: [final.entry],
        sentence: `${called}: made final ${was.length > 0 ? was.join(', ') : 'in a position that nobody wrote down'}; final counts only ${position}. ${why[position]}`,
        remedy: `Slacken it, bring the vehicle ${position === 'wheels straight' ? 'to wheels straight' : position === 'at ride height' ? 'to ride height' : 'down'}, tighten it again and write down the position.`,
      }),
    )
  // A height from before the joint was opened, or before a part was renewed, is another vehicle's.
  const renewed = state.renewed.filter((part) => part.wheels.includes(wheel) && part.entry < final.entry)
  const since = Math.max(record.undone?.entry ?? -1, ...renewed.map(({ entry }) => entry))
  const height = state.heights.some(
    (fact) => fact.wheel === wheel && fact.when === 'settled' && fact.entry > since,
  )
  if (found.length === 0 && required.positions.includes('at ride height') && !height)
    found.push({
      rule: 'I7',
      holdsAt: 'run up',
      entries: [final.entry],
      sentence: `${called}: made final at ride height, but no settled ride height of that wheel is recorded since it was opened.`,
      remedy: 'Measure the ride height of this wheel as it stands, and write it down.',
    })
  return found
}
