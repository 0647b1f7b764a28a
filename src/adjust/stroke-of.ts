import { Refusal } from '../quantity/index.ts'
import type { Adjuster, AdjustRefusal } from './adjuster.ts'

/** Rounding in a file or in a sum of steps must not throw a setting out of its range. */
const slack = 1e-9

/**
 * How far a setting shifts its point (or lengthens its link, or slides its bolt, or tilts its wheel) from the middle:
 *
 *     eccentric     throw · sin setting     (the other way round: −throw · sin setting)
 *     shims, wedge  setting − as drawn
 *     thread        pitch · setting         (left-and-right sleeve: 2 · pitch · setting)
 *     all others    setting
 *
 * @param setting in the adjuster's own unit (`settingUnit`)
 * @returns m, or rad for an offset sleeve and a wedge; positive the way that a positive setting goes
 * @throws {Refusal} `setting-out-of-range` beyond the ends of the range, or not a number
 * @source definition
 * @example strokeOf({ kind: 'thread', pitch: mm(1.5), sleeve: true, range: [turn(-5), turn(5)] }, turn(2)) // 0.006 m
 */
export function strokeOf(adjuster: Adjuster, setting: number): number {
  const [low, high] = adjuster.range
  const room = slack * (1 + Math.abs(low) + Math.abs(high))
  if (!(setting >= low - room && setting <= high + room))
    throw new Refusal<AdjustRefusal>({
      code: 'setting-out-of-range',
      at: adjuster.id,
      given: String(setting),
      sentence: `"${adjuster.name}" cannot be set to ${setting}: its range is ${low} to ${high}.`,
      remedy: 'Read the setting again, or correct the range of this adjuster.',
    })
  switch (adjuster.kind) {
    case 'eccentric':
      return (adjuster.fitted === 'turned round' ? -1 : 1) * adjuster.throw * Math.sin(setting)
    case 'shims':
    case 'wedge':
      return setting - (adjuster.asDrawn ?? 0)
    case 'thread':
      return (adjuster.sleeve ? 2 : 1) * adjuster.pitch * setting
    case 'slotted bolt':
    case 'slide':
    case 'top plate':
    case 'offset sleeve':
    case 'sub-frame shift':
      return setting
  }
}
