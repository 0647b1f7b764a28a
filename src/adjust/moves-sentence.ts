import type { Moves } from './moves-answer.ts'

/**
 * The moves in one plain sentence or a few: what first, what last, how sure, what is out of reach.
 *
 * @param threshold probability that counts as proven
 * @source definition
 */
export function movesSentence(answer: Omit<Moves, 'sentence'>, threshold: number): string {
  const { moves, outOfReach, insideAfter, reachableAfter, reachableNow, notRead } = answer
  const said: string[] = []
  if (moves.length > 0) {
    const first = moves[0]!
    said.push(
      `Start with the ${first.adjuster.name}, ${first.side} ${first.end}: ${first.hand.amount}${first.hand.seenFrom ? `, ${first.hand.seenFrom}` : ''}.`,
    )
    if (moves.length > 1) {
      const toes = moves.filter((move) => move.job === 'toe').length
      said.push(
        toes > 0 && toes < moves.length
          ? `Then ${moves.length - 1} more, toe last.`
          : `Then ${moves.length - 1} more, in the order given.`,
      )
    }
    said.push(
      outOfReach.length === 0
        ? `${percent(insideAfter)} to be inside everything.`
        : `${percent(reachableAfter)} to have the rest inside.`,
    )
  } else if (outOfReach.length === 0)
    said.push(
      reachableNow >= threshold
        ? 'No move is needed: all readings that an adjuster can change are inside.'
        : 'No move would make it surer: better readings would.',
    )
  for (const one of outOfReach) said.push(capital(one.sentence))
  if (notRead.length > 0) said.push(`Not read yet: ${notRead.join(', ')}.`)
  return said.join(' ')
}

/** Whole percent, never more certain than the draws are. */
function percent(chance: number): string {
  if (chance >= 0.995) return 'More than 99 %'
  if (chance < 0.005) return 'Less than 1 %'
  return `${Math.round(chance * 100)} %`
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
