import type { Findings } from '../findings/index.ts'
import type { FindingsGroup } from './findings-sheet.ts'

/** A group as one sentence: its members, and that nothing read so far tells them apart. */
export function groupSentence(words: readonly string[], more: number): string {
  const [first = '', ...rest] = words
  const count = words.length + more
  const ways = rest.map((one) => `; or ${one}`).join('')
  const others = more > 0 ? `; or one of ${more} less likely ${more === 1 ? 'one' : 'ones'}` : ''
  const same = count > 1 ? `: these readings cannot tell ${count === 2 ? 'the two' : 'them'} apart` : ''
  return `${upper(first)}${ways}${others}${same}.`
}

/** The answer in one or two sentences, "I cannot tell" among them. */
export function answerOf(
  { cannotTell, groups: [first], pairs: found }: Findings,
  groups: readonly FindingsGroup[],
  pairs: readonly string[],
): string {
  const [group] = groups
  if (!group || !first)
    return 'I cannot tell: nothing that was read favours one explanation. Make the first check below.'
  if (cannotTell)
    return `I cannot tell. Nothing stands out: the likeliest finding has a belief of ${group.beliefText}, which is too little to order a part or to turn an adjuster on. Make the first check below.`
  if (first.suspects.some(({ suspect }) => suspect.kind === 'out of adjustment'))
    return `No part need be at fault: adjustment alone explains what was read (${group.beliefText}). That clears no part: what was not read stands below.`
  const both = found.reduce((sum, { posterior }) => sum + posterior, 0)
  if (both >= 0.5 && pairs[0])
    return `One fault alone does not explain what was read; two at once do. Likeliest: ${pairs[0]}`
  if (group.alike.length > 0)
    return `${group.sentence} But nearly the same would be read with ${group.alike.join('; or ')}. How large such a fault would have to be, and where its adjusters would then stand, speak against that, and neither is proof: look at ${group.alike.length > 1 ? 'all of them' : 'both'} before a part is ordered.`
  return `One finding stands out, ${group.beliefText}: ${group.sentence}`
}

/** How many share what is left of belief. */
export const othersOf = (count: number): string =>
  count > 0
    ? `${count} more ${count === 1 ? 'finding was' : 'findings were'} weighed; none is likely, and none is ruled out.`
    : ''

const upper = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
