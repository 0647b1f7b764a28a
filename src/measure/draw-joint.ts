import { measureRefusal } from './measure-refusal.ts'
import type { Measured, Part } from './measured.ts'
import { type SeededRandom, seededRandom } from './seeded-random.ts'

/**
 * How many draws, from which seed.
 *
 * @source definition
 */
export interface Draws {
  readonly draws: number
  readonly seed: number
}

/**
 * Plausible true values of several readings at once. An error that two of them share is drawn once, so a floor
 * or a zero that is off is off for both.
 *
 * @returns draws × ms.length numbers, row by row, SI
 * @throws {Refusal} `too-few` for no draws; `source-conflict`
 * @source JCGM 101:2008, 7.2–7.4 and 6.4
 * @example drawJoint([exact(3)], { draws: 2, seed: 1 })[1] // 3
 */
export function drawJoint(ms: readonly Measured[], { draws, seed }: Draws): Float64Array {
  const k = ms.length
  const out = new Float64Array(checkedDraws(draws) * k)
  for (let i = 0; i < k; i++) for (let d = 0; d < draws; d++) out[d * k + i] = ms[i]!.value
  const random = seededRandom(seed)
  for (const { part, effects } of sources(ms)) {
    const draw = variate(part, random)
    for (let d = 0; d < draws; d++) {
      const x = draw()
      for (const [i, effect] of effects) out[d * k + i]! += effect * x
    }
  }
  return out
}

/** A whole number of draws, at least one. */
function checkedDraws(draws: number): number {
  if (Number.isInteger(draws) && draws >= 1) return draws
  throw measureRefusal('too-few', 'draws', draws, `${draws} draws are none.`, 'Ask for at least one.')
}

interface Source {
  readonly part: Part
  readonly effects: [number, number][]
}

function sources(ms: readonly Measured[]): Iterable<Source> {
  const found = new Map<string, Source>()
  for (const [i, { parts }] of ms.entries())
    for (const part of parts) {
      const before = found.get(part.source)
      if (!before) found.set(part.source, { part, effects: [[i, part.effect]] })
      else if (before.part.shape !== part.shape || before.part.dof !== part.dof)
        throw measureRefusal(
          'source-conflict',
          part.source,
          part.shape,
          `The error “${part.source}” appears with two different shapes or degrees of freedom.`,
          'Give two different errors two names.',
        )
      else before.effects.push([i, part.effect])
    }
  return found.values()
}

/** One error in units of its effect. */
function variate({ shape, dof }: Part, random: SeededRandom): () => number {
  const { uniform, normal, chiSquared } = random
  switch (shape) {
    case 'normal':
      return normal
    case 'rectangular':
      return () => Math.sqrt(3) * (2 * uniform() - 1)
    case 'triangular':
      return () => Math.sqrt(6) * (uniform() + uniform() - 1)
    case 'arcsine':
      return () => Math.SQRT2 * Math.sin(2 * Math.PI * uniform())
    case 'student':
      return Number.isFinite(dof) ? () => normal() / Math.sqrt(chiSquared(dof) / dof) : normal
  }
}
