import { type AskedOnce, askedOnce } from './asked-once.ts'
import type { Choice } from './choice.ts'
import { type ChoiceSearch, choicesWithin } from './choices-within.ts'

/** The cheapest for one corner among those that ask for the same once an axle. @source definition */
export interface CornerChoice {
  readonly choice: Choice
  /** Without what is asked for once an axle. */
  readonly minutes: number
  readonly asked: ReadonlySet<AskedOnce>
}

/**
 * The cheapest ways to undo what one corner must, where what the vehicle has once is undone as it stands: for each set
 * of what is asked for once an axle the cheapest, but for those that ask for more and cost no less.
 *
 * @param context what is undone of what the vehicle has once
 * @param spare minutes: what a choice of this corner may cost at most, with what it asks for once
 * @param wanted told of contexts in which more is undone
 * @source own derivation: docs/methods/plan.md
 */
export function cornerChoices(
  search: ChoiceSearch,
  context: Choice,
  corner: string,
  spare: number,
  wanted: (context: Choice) => void,
): readonly CornerChoice[] {
  const { assembly, priced } = search
  let kept: readonly CornerChoice[] = []
  const weighed = (choice: Choice): CornerChoice => {
    const asked = askedOnce.by(assembly, choice.open)
    return { choice, asked, minutes: priced(choice) - sumOf(asked) }
  }
  choicesWithin(search, context, [corner], {
    isCut: (choice) => {
      const one = weighed(choice)
      return one.minutes + sumOf(one.asked) >= spare || kept.some((other) => isNoDearer(other, one))
    },
    found: (choice) => {
      const one = weighed(choice)
      kept = [...kept.filter((other) => !isNoDearer(one, other)), one]
    },
    wanted,
  })
  return kept
}

const sumOf = (asked: ReadonlySet<AskedOnce>): number =>
  [...asked].reduce((sum, one) => sum + askedOnce.minutes(one), 0)

const isNoDearer = (one: CornerChoice, than: CornerChoice): boolean =>
  one.minutes <= than.minutes + 1e-9 && [...one.asked].every((asked) => than.asked.has(asked))
