import type { TorqueWrench, WrenchClass } from '../fasten/index.ts'
import { metre, mm, Nm, type TorqueUnit } from '../quantity/index.ts'
import type { Kit } from './kit-schema.ts'

/** Adjustable and graduated; dial; electronic; bending beam. */
const classes: Readonly<Record<string, WrenchClass>> = {
  clicking: 'II A',
  dial: 'I B',
  electronic: 'I C',
  beam: 'I A',
}
/** Where the kit does not say how far from the middle of the grip the hand may pull. */
const HAND = mm(20)

/**
 * The torque wrenches of a kit as the fasten room takes them, by their place in the kit. The unit of the scale is
 * the one in which its upper end was typed.
 *
 * @source ISO 6789-1:2017, 5.1 (classes; from memory); the hand's spread where none is typed: common practice, no source
 */
export function torqueWrenchesOf(kit: Kit): Readonly<Record<string, TorqueWrench>> {
  return Object.fromEntries(
    Object.entries(kit.wrenches ?? {}).map(([id, wrench]) => [
      id,
      {
        name: wrench.name,
        kind: classes[wrench.kind]!,
        scale: {
          low: wrench.range[0].value,
          high: wrench.range[1].value,
          step: Nm(wrench.resolution.value),
        },
        unit: unitOf(wrench.range[1].text),
        reach: metre(wrench.lever.value),
        handSpread: wrench.handSpread?.value ?? HAND,
        deviation: wrench.accuracy.value,
        calibratedUntil: wrench.calibrationDue?.slice(0, 10) ?? null,
      },
    ]),
  )
}

function unitOf(text: string): TorqueUnit {
  if (/kg/i.test(text)) return /cm/i.test(text) ? 'kgf·cm' : 'kgf·m'
  if (/oz/i.test(text)) return 'ozf·in'
  if (/ft/i.test(text)) return 'lbf·ft'
  return /in/i.test(text) ? 'lbf·in' : 'N·m'
}
