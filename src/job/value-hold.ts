import { conditionWarning } from '../fasten/index.ts'
import type { JointCase, ToDo } from './to-do.ts'
import { SAME_TORQUE, torqueOf } from './torque-of.ts'

/** Rounding of a conversion between units, for the ends of a range. */
const ROUNDING = 1e-3

/**
 * What was recorded against what the workshop's sheet asks for: value, angle, stages, condition of the thread.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function valueHold({ called, required, record, kit }: JointCase): readonly ToDo[] {
  const { final, twoValues } = record
  if (!final) return []
  const { procedure, low, high, angle } = required
  // A plain torque can be pulled again or on; everything else is begun anew.
  const pull = procedure === 'torque' ? 'tighten' : 'begin anew'
  const hold = (
    rule: ToDo['rule'],
    entries: readonly number[],
    sentence: string,
    remedy: string,
    mend: ToDo['mend'] = 'begin anew',
  ): ToDo => ({
    rule,
    holdsAt: 'run up',
    mend,
    entries,
    sentence,
    remedy,
  })
  const found: ToDo[] = []
  if (twoValues)
    found.push(
      hold(
        'two values',
        twoValues,
        `${called}: two values are recorded. Decide.`,
        'Look at the joint and the wrench, and decide which entry holds.',
        'elsewhere',
      ),
    )
  if (procedure === null)
    found.push(
      hold(
        'no value',
        [final.entry],
        `${called}: the spec sheet has no value, so nothing says that this is right.`,
        'Type its procedure and value from your own information into the spec sheet; none is made up here.',
        'elsewhere',
      ),
    )
  // A castle nut's torque is that of its floor: on the way to the slot nobody knows it.
  const floor = procedure === 'castle slot' ? record.stages.at(-1) : undefined
  const torque = torqueOf(final) ?? (floor ? torqueOf(floor) : null)
  if (low && high) {
    // One stated value is met by the nearest mark of the wrench that made it.
    const wrench = kit?.wrenches?.[(floor ?? final).wrench ?? '']
    const mark = low.value === high.value && wrench ? (wrench.resolution.value / 2) * (1 + ROUNDING) : 0
    const room = Math.max((angle || low === high ? SAME_TORQUE : ROUNDING) * high.value, mark)
    const of = torqueOf(final) === null && floor ? floor : final
    const typed = (of.torque ?? of.setting)?.text
    if (torque === null)
      found.push(
        hold(
          'value',
          [final.entry],
          `${called}: the torque received is not written down${final.adapter ? '; the setting of a wrench with an adapter is another number' : ''}.`,
          `Write down the torque at the fastener; asked for is ${required.said}.`,
          pull,
        ),
      )
    else if (torque < low.value - room)
      found.push(
        hold(
          'value',
          [final.entry],
          `${called}: received “${typed}”, less than “${low.text}”.`,
          `Tighten it on to ${required.said}, and decide that the new entry holds.`,
          pull,
        ),
      )
    else if (torque > high.value + room)
      found.push(
        hold(
          'value',
          [final.entry],
          `${called}: received “${typed}”, more than “${high.text}”.`,
          'Do not slacken it back to the value: undo it, look at bolt, nut and thread, and tighten it anew, with new parts if it was strained.',
        ),
      )
  }
  if (angle && !(final.angle && Math.abs(final.angle.value - angle.value) <= required.angleWithin))
    found.push(
      hold(
        'value',
        [final.entry],
        `${called}: must be turned on by ${angle.text} after its torque; ${final.angle ? `recorded is “${final.angle.text}”` : 'no angle is recorded'}.`,
        'Look at the mark; when in doubt undo it and tighten it anew.',
      ),
    )
  const float = final.endFloat?.value
  if (required.endFloat && !(float !== undefined && within(float, required.endFloat)))
    found.push(
      hold(
        'value',
        [final.entry],
        `${called}: the end float is ${final.endFloat ? `“${final.endFloat.text}”` : 'not written down'}; asked for is ${required.endFloat.map(({ text }) => text).join(' to ')}.`,
        'Seat the bearings again while the hub turns, back off, and read the end float on a dial before the pin.',
      ),
    )
  const missing = required.stages.flatMap((stage, i) => {
    const told = record.stages.find((fact) => fact.stage === 'stage' && fact.number === i + 1)
    return told ? [] : [`${i + 1} (${stage.text})`]
  })
  if (missing.length > 0)
    found.push(
      hold(
        'stages',
        [final.entry],
        `${called}: tightened in stages; stage ${missing.join(' and ')} is not recorded.`,
        'Slacken the fasteners and tighten them in stages, opposite first; or write down the stage if it was done.',
      ),
    )
  const other =
    final.condition === undefined
      ? null
      : conditionWarning({ stated: required.condition, found: final.condition })
  if (other !== null)
    found.push(
      hold(
        'condition',
        [final.entry],
        `${called}: ${other}`,
        'Undo it, bring the thread into the stated condition and tighten it anew.',
      ),
    )
  return found
}

const within = (value: number, [low, high]: readonly [{ value: number }, { value: number }]): boolean =>
  value >= low.value - ROUNDING * Math.abs(low.value) && value <= high.value + ROUNDING * Math.abs(high.value)
