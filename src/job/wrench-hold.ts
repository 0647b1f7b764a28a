import { checkWrench, torqueThrough } from '../fasten/index.ts'
import { adapterOf, torqueWrenchesOf } from '../kit/index.ts'
import { formatTorque, Nm, Refusal, rad } from '../quantity/index.ts'
import type { TightenedFact } from './joint-record.ts'
import type { JointCase, ToDo } from './to-do.ts'
import { torqueOf } from './torque-of.ts'

/** How far the recorded torque may be from what setting and adapter give: the rounding of a wrench's scale. */
const NEAR = 0.02

/**
 * Whether the wrench that made a joint final could do so: within its range, calibrated on that day, and its setting
 * with the adapter giving the torque that is written down. A wrench that the kit lacks is told elsewhere.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function wrenchHold({ called, required, record, kit }: JointCase): readonly ToDo[] {
  // The torque of a castle nut is read at its floor.
  const floor = required.procedure === 'castle slot' ? record.stages.at(-1) : undefined
  const final = record.final && torqueOf(record.final) === null && floor ? floor : record.final
  const id = final?.wrench
  const wrench =
    kit && id !== undefined && Object.hasOwn(kit.wrenches ?? {}, id) ? torqueWrenchesOf(kit)[id] : null
  if (!final || !kit || !wrench) return []
  const hold = (holdsAt: ToDo['holdsAt'], sentence: string, remedy: string): ToDo => ({
    rule: 'wrench',
    holdsAt,
    mend: holdsAt === null ? 'elsewhere' : required.procedure === 'torque' ? 'tighten' : 'begin anew',
    entries: [final.entry],
    sentence: `${called}: ${sentence}`,
    remedy,
  })
  const setting = final.setting?.value ?? (final.adapter ? undefined : final.torque?.value)
  if (setting === undefined) return []
  const found: ToDo[] = []
  // Without a day on the entry only the range can be judged.
  const today = final.at?.slice(0, 10) ?? wrench.calibratedUntil ?? '0001-01-01'
  const uncalibrated = wrench.calibratedUntil === null ? 'warn' : 'refuse'
  try {
    for (const warning of checkWrench({ wrench, setting: Nm(setting), today, uncalibrated }))
      found.push(
        hold(
          null,
          warning,
          'Write the last day of its calibration into the kit; mind the low end of its scale.',
        ),
      )
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal
    found.push(hold('run up', refusal.sentence, refusal.remedy))
  }
  const given = throughAdapter(final, setting, kit, wrench.reach)
  const told = final.torque?.value
  if (given !== null && told !== undefined && Math.abs(given - told) > NEAR * told)
    found.push(
      hold(
        'run up',
        `“${final.setting?.text}” on this wrench with its adapter gives ${formatTorque(Nm(given), { unit: 'N·m', digits: 0 })} at the fastener, not “${final.torque?.text}”.`,
        'Look at the adapter’s angle and at both numbers; correct the entry, or set the wrench anew and tighten again.',
      ),
    )
  return found
}

function throughAdapter(
  final: TightenedFact,
  setting: number,
  kit: NonNullable<JointCase['kit']>,
  reach: Parameters<typeof torqueThrough>[0]['reach'],
): number | null {
  if (!final.adapter?.angle) return final.adapter ? null : setting
  const adapter = adapterOf(kit, final.adapter.adapter, rad(final.adapter.angle.value))
  if (!adapter) return null
  try {
    return torqueThrough({ setting: Nm(setting), reach, offset: adapter.offset, angle: adapter.angle })
  } catch (refusal) {
    if (refusal instanceof Refusal) return null
    throw refusal
  }
}
