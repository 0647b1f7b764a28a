import type { Measured } from '../measure/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { FindingsProblem } from './findings-problem.ts'

/** Why the findings say no. @source definition */
export type FindingsRefusal = 'not-finite' | 'not-positive' | 'repeated-axle'

/**
 * Makes sure that there is something to compute with.
 *
 * @throws {Refusal} `not-finite` for a number that is none; `repeated-axle` for two axles at one end;
 *   `not-positive` for spreads that are none
 * @source definition
 */
export function checkProblem(problem: FindingsProblem, spreads = 1): void {
  const { axles, readings, heights, turns, setBack, play, treads } = problem
  if (new Set(axles.map(({ end }) => end)).size < axles.length)
    throw new Refusal<FindingsRefusal>({
      code: 'repeated-axle',
      at: 'axles',
      given: axles.map(({ end }) => end).join(', '),
      sentence: 'Two axles are given for one end of the vehicle.',
      remedy: 'Give one front and one rear axle at most.',
    })
  if (!(spreads > 0) || !Number.isFinite(spreads))
    throw new Refusal<FindingsRefusal>({
      code: 'not-positive',
      at: 'spreads',
      given: String(spreads),
      sentence: `Spreads cannot be taken ${spreads} times over.`,
      remedy: 'Give a number above nothing; 1 takes them as they are believed.',
    })
  const all: readonly (readonly [string, Measured | null | undefined])[] = [
    ...Object.entries(readings),
    ...Object.entries(heights).map(([wheel, m]) => [`${wheel} height`, m] as const),
    ...Object.entries(turns).map(([side, m]) => [`toe-out on turns, ${side}`, m] as const),
    ['set-back', setBack],
    ...play.map(({ wheel, joint, swing }) => [`play, ${wheel} ${joint}`, swing] as const),
    ...treads.flatMap(({ wheel, outer, inner }) => [
      [`tread, ${wheel}, outer`, outer] as const,
      [`tread, ${wheel}, inner`, inner] as const,
    ]),
  ]
  for (const [at, measured] of all) {
    if (!measured) continue
    const numbers = [measured.value, ...measured.parts.map(({ effect }) => effect)]
    const wrong = numbers.find((x) => !Number.isFinite(x))
    if (wrong !== undefined)
      throw new Refusal<FindingsRefusal>({
        code: 'not-finite',
        at,
        given: String(wrong),
        sentence: `${at} is ${wrong}, which is not a number to compute with.`,
        remedy: 'Type the reading again, or leave it out.',
      })
  }
}
