import { type Metre, metre } from '../quantity/index.ts'

/** A thread with what strength and friction need of it; 60° profile. @source definition */
export interface Thread {
  /** As it is written: "M12x1.5", "1/2-20 UNF". */
  readonly designation: string
  readonly system: 'metric' | 'unified'
  readonly series: 'coarse' | 'fine'
  readonly hand: 'right' | 'left'
  readonly diameter: Metre
  readonly pitch: Metre
  readonly pitchDiameter: Metre
  /** Minor diameter of the nut's thread, D1. */
  readonly minorDiameter: Metre
  /** Root of the bolt's thread, d3; null where its standard gives the area directly. */
  readonly rootDiameter: Metre | null
  /** Diameter of the circle with the stress area. */
  readonly stressDiameter: Metre
  /** Tensile stress area, m². */
  readonly stressArea: number
}

/** Facts of one row of a table. */
export type ThreadFacts = Pick<Thread, 'designation' | 'system' | 'series' | 'hand' | 'diameter' | 'pitch'>

// Height of the fundamental triangle H = √3/2 · P; the profile cuts parts of it off (ISO 68-1).
const TRIANGLE = Math.sqrt(3) / 2
const TO_PITCH_LINE = 2 * (3 / 8) * TRIANGLE
const TO_MINOR = 2 * (5 / 8) * TRIANGLE
const TO_ROOT = 2 * (17 / 24) * TRIANGLE
/** Of a unified thread: At = π/4 (D − 0.9743/n)², as ASME B1.1 prints it. */
const UNIFIED_STRESS = 0.9743

/**
 * A thread's dimensions from its diameter and pitch:
 *
 *     d2 = d − 0.6495 P,  D1 = d − 1.0825 P,  d3 = d − 1.2269 P,  As = π/4 · ((d2 + d3)/2)²
 *
 * A unified thread has As = π/4 · (D − 0.9743/n)², n threads per inch.
 */
export function threadOf(facts: ThreadFacts): Thread {
  const { diameter: d, pitch: p } = facts
  const d2 = d - TO_PITCH_LINE * p
  const d3 = d - TO_ROOT * p
  const ds = facts.system === 'metric' ? (d2 + d3) / 2 : d - UNIFIED_STRESS * p
  return {
    ...facts,
    pitchDiameter: metre(d2),
    minorDiameter: metre(d - TO_MINOR * p),
    rootDiameter: facts.system === 'metric' ? metre(d3) : null,
    stressDiameter: metre(ds),
    stressArea: (Math.PI * ds * ds) / (2 * 2),
  }
}
