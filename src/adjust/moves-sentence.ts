import type { AxleEnd } from '../linkage/index.ts'
import { formatChance } from '../quantity/index.ts'
import type { ActsOn } from './adjuster.ts'
import { isForToe } from './job-of.ts'
import type { Moves } from './moves-answer.ts'

/**
 * The moves in one plain sentence or a few: what first, what last, how sure, what is out of reach.
 *
 * @param threshold probability that counts as proven
 * @source definition
 */
export function movesSentence(answer: Omit<Moves, 'sentence'>, threshold: number): string {
  const { moves, outOfReach, insideAfter, reachableAfter, reachableNow, notRead, readFirst } = answer
  const said: string[] = outOfReach.map((one) => capital(one.sentence))
  if (outOfReach.length > 0) {
    const parts = outOfReach[0]!.mayBe.slice(0, 3).join(', ')
    said.push(`Look for the part before turning anything${parts ? `: ${parts}` : ''}.`)
  }
  if (moves.length > 0) {
    const { adjuster, side, end, hand } = moves[0]!
    const where = hand.seenFrom ? `, ${hand.seenFrom}` : ''
    const start = outOfReach.length === 0 ? 'Start' : 'After that, for the rest, start'
    said.push(`${start} with the ${adjuster.name}, ${placeText(end, side)}: ${hand.amount}${where}.`)
    const toes = moves.filter((move) => isForToe(move.job)).length
    if (moves.length > 1)
      said.push(
        toes > 0 && toes < moves.length
          ? `Then ${moves.length - 1} more, toe last.`
          : `Then ${moves.length - 1} more, in the order given.`,
      )
    said.push(
      outOfReach.length === 0
        ? `${capital(formatChance(insideAfter))} to be inside everything.`
        : `${capital(formatChance(reachableAfter))} to have the rest inside.`,
    )
  } else if (outOfReach.length === 0 && readFirst.length === 0)
    said.push(
      reachableNow >= threshold
        ? 'No move is needed: all readings that an adjuster can change are inside.'
        : 'No move would make it surer: better readings would.',
    )
  for (const { adjuster, side, end } of readFirst)
    said.push(
      `See how the ${adjuster.name}, ${placeText(end, side)}, is fitted: without that nobody can say what to do with it.`,
    )
  if (notRead.length > 0) said.push(`Not read yet: ${notRead.join(', ')}.`)
  return said.join(' ')
}

const placeText = (end: AxleEnd, side: ActsOn) => (side === 'both' ? `${end} axle` : `${side} ${end}`)
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
