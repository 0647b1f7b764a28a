import { type NewtonMetre, type Radian, rad } from '../quantity/index.ts'
import { fastenRefusal, positive } from './fasten-refusal.ts'

/** A ring of fasteners to be tightened. @source definition */
export interface Ring {
  /** 3 to 32, numbered round the circle. */
  readonly count: number
  /** What each stage gives every fastener, rising; the last is the stated torque. */
  readonly stages: readonly NewtonMetre[]
  /** Where fastener 1 stands, clockwise from the top, seen from outside; the top when left out. */
  readonly firstAt?: Radian | undefined
}

/** What is drawn and what is pulled. @source definition */
export interface TighteningSequence {
  /** Fastener numbers in the order they are pulled, the same in each stage. */
  readonly order: readonly number[]
  /** By number: clockwise from the top, and its turn in the order (1 is first). */
  readonly places: readonly { readonly number: number; readonly at: Radian; readonly turn: number }[]
  readonly pulls: readonly { readonly stage: number; readonly number: number; readonly torque: NewtonMetre }[]
}

const FEWEST = 3
const MOST = 32

/**
 * The order for a ring of fasteners: opposite first. An even ring goes in pairs exactly opposite, its pairs again
 * opposite-first; an odd one always steps on by (n − 1)/2. Each stage goes once round all of them.
 *
 * @throws {Refusal} `bad-count` outside 3–32; `bad-stages` when there is none or they do not rise; `not-positive`, `not-finite`
 * @source UK DVSA, "Careless torque costs lives", Care of wheels (diametrically opposed in turn, gradually); own derivation: docs/methods/sequences.md
 * @example tighteningSequence({ count: 5, stages: [Nm(55), Nm(110)] }).order // [1, 3, 5, 2, 4]
 */
export function tighteningSequence({ count, stages, firstAt = rad(0) }: Ring): TighteningSequence {
  if (!(Number.isInteger(count) && count >= FEWEST && count <= MOST))
    throw fastenRefusal({
      code: 'bad-count',
      at: 'count',
      given: String(count),
      sentence: `A ring of ${count} fasteners has no sequence here: it takes ${FEWEST} to ${MOST}.`,
      remedy: 'Count the fasteners again.',
    })
  for (const [i, torque] of stages.entries()) positive(torque, `stage ${i + 1}`)
  if (stages.length === 0 || stages.some((torque, i) => i > 0 && torque <= stages[i - 1]!))
    throw fastenRefusal({
      code: 'bad-stages',
      at: 'stages',
      given: stages.join(', '),
      sentence:
        stages.length === 0
          ? 'There is no stage to tighten in.'
          : 'Each stage must be higher than the one before.',
      remedy: 'Give the stages from low to high, the stated torque last.',
    })
  const order = oppositeFirst(count)
  return {
    order,
    places: Array.from({ length: count }, (_, i) => ({
      number: i + 1,
      at: rad((firstAt + (2 * Math.PI * i) / count) % (2 * Math.PI)),
      turn: order.indexOf(i + 1) + 1,
    })),
    pulls: stages.flatMap((torque, i) => order.map((number) => ({ stage: i + 1, number, torque }))),
  }
}

/** Pairs of an even ring are themselves a ring of half as many. */
function oppositeFirst(n: number): readonly number[] {
  if (n === 1) return [1]
  if (n % 2 === 0) return oppositeFirst(n / 2).flatMap((i) => [i, i + n / 2])
  const step = (n - 1) / 2
  return Array.from({ length: n }, (_, i) => ((i * step) % n) + 1)
}
