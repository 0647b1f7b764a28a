import { torqueReceived } from '../fasten/index.ts'
import type { BoltLine } from '../job/index.ts'
import { adapterOf, type Kit, torqueWrenchesOf } from '../kit/index.ts'
import { Nm, Refusal, rad, type UnitChoice } from '../quantity/index.ts'
import type { ProofBolt } from './proof-sheet.ts'
import { sheetNumber } from './sheet-number.ts'

type Final = NonNullable<BoltLine['record']['final']>

/** The joints that were worked on or that hold something, what is open first, each as it is recorded. */
export function proofBolts(
  book: readonly BoltLine[],
  kit: Kit | null,
  units: UnitChoice,
): readonly ProofBolt[] {
  return book
    .filter(({ state, done }) => !done || state !== 'closed')
    .map((line): ProofBolt => {
      const { final, checks, pin, stages, runUp, started, undone } = line.record
      const last = final ?? stages.at(-1) ?? runUp ?? started ?? undone
      return {
        wheel: line.place,
        letter: line.letter,
        name: line.name,
        state: line.state,
        done: line.done,
        required: line.required.said,
        value: final ? recordedValue(final, kit, units) : '',
        wrench: final?.wrench ? wrenchOf(final, kit) : '',
        how: final ? howOf(final, line.record.fastener) : '',
        hand: last ? [last.hand, last.at?.slice(0, 10)].filter(Boolean).join(', ') : '',
        secondLook: checks
          .map(({ hand, by, how, passed }) =>
            [
              hand,
              by === 'another person' ? null : 'the same hand, later',
              how,
              passed ? 'passed' : 'not passed',
            ]
              .filter(Boolean)
              .join(', '),
          )
          .join('; '),
        pin: pin ? `pin ${pin.pin}, legs ${pin.legsBent ? 'bent' : 'not bent'}` : '',
        open: line.toDo.flatMap(({ holdsAt, sentence }) => (holdsAt === null ? [] : [sentence])),
        due: line.toDo.flatMap(({ holdsAt, sentence }) => (holdsAt === null ? [sentence] : [])),
      }
    })
}

/** What was recorded, and how far off the fastener may be by the wrench that was used. */
function recordedValue(final: Final, kit: Kit | null, units: UnitChoice): string {
  const typed = final.torque ?? final.setting
  const torque = typed && `${typed.text}${spreadOf(final, kit, units)}`
  const parts = [
    torque,
    final.angle && `then ${final.angle.text}`,
    final.endFloat && `end float ${final.endFloat.text}`,
  ].filter(Boolean)
  return parts.length > 0 ? parts.join(', ') : 'final, no value recorded'
}

function spreadOf(final: Final, kit: Kit | null, units: UnitChoice): string {
  const { torque, setting, wrench: id } = final
  const wrench = kit && id ? torqueWrenchesOf(kit)[id] : undefined
  const set = setting ?? torque
  if (!wrench || !set) return ' (spread not known: the wrench is not in the kit)'
  try {
    const adapter = final.adapter
      ? adapterOf(kit!, final.adapter.adapter, final.adapter.angle?.value ?? rad(0))
      : null
    // An adapter without the mark that was set says what the fastener received: the wrench's own share counts.
    const received = torqueReceived({ wrench, adapter: setting ? adapter : null, setting: Nm(set.value) })
    return ` ${sheetNumber(received, { kind: 'torque', unit: units.torque }).spread}`
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    return ' (spread not known)'
  }
}

function wrenchOf({ wrench: id, calibrated, adapter }: Final, kit: Kit | null): string {
  const owned = id ? kit?.wrenches?.[id] : undefined
  const until = owned?.calibrationDue?.slice(0, 10)
  return [
    owned?.name ?? id,
    adapter && `adapter ${kit?.adapters?.[adapter.adapter]?.name ?? adapter.adapter}`,
    until
      ? `calibrated until ${until}`
      : calibrated
        ? `calibrated ${calibrated.slice(0, 10)}`
        : 'calibration not recorded',
  ]
    .filter(Boolean)
    .join(', ')
}

const howOf = ({ position, condition }: Final, fastener: 'new' | 'used again' | null): string =>
  [...(position ?? []), condition, fastener && `fastener ${fastener}`].filter(Boolean).join(', ')
