import type { Action, Need } from './action.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import type { Work } from './work.ts'

const wrongParts = ({ branches }: Work): readonly string[] =>
  branches.flatMap(({ failure }) => (failure.what === 'wrong part in the box' ? [failure.part!] : []))

/**
 * Where a box had the wrong part: the stop until the right one is there.
 *
 * @source common practice, no source
 */
export const waitsForParts = (work: Work): readonly Action[] =>
  wrongParts(work).map((id) => {
    const { called, axle, side } = work.assembly.parts[id]!
    return makeAction({
      id: `wait for ${id}`,
      verb: 'wait for part',
      words: `Stop here until the right ${called} is there`,
      part: id,
      axle,
      side,
      place: 'at the bench',
      effects: { [keys.box(id)]: 'right part' },
      cautions: [
        'Nothing that only waits for it is loosened meanwhile. Overnight the vehicle stands on its wheels, or is made safe.',
      ],
      records: ['wrong part: what was in the box, sent back', 'when the right one is due'],
      why: 'wrong part in the box: only what waits for it waits',
    })
  })

/** What waits for the right part: its comparing, and whatever is loosened for it. */
export const boxNeeds = (work: Work): readonly Need[] =>
  wrongParts(work).map((id) => ({
    key: keys.box(id),
    is: ['right part'],
    why: `the right ${work.assembly.parts[id]!.called} is there`,
  }))
