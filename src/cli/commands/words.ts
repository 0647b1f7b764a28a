import { BadInput } from '../files/outcome.ts'

/**
 * WORD=VALUE words of a command line, each once, none unknown; everything wrong is told at once.
 *
 * @param known words that say something here
 * @param called what they are said of: "adapter"
 */
export function wordsOf(
  given: readonly string[],
  known: readonly string[],
  called: string,
): ReadonlyMap<string, string> {
  const words = new Map<string, string>()
  const wrong: string[] = []
  for (const word of given) {
    const at = word.indexOf('=')
    const name = at < 0 ? word : word.slice(0, at)
    if (at < 0) wrong.push(`“${word}” has no “=”. Write it as WORD=VALUE, such as ${known[0]}="…".`)
    else if (!known.includes(name))
      wrong.push(`“${name}” says nothing for ${called}. Known are ${known.join(', ')}.`)
    else if (words.has(name)) wrong.push(`“${name}” is said twice. Leave one of them out.`)
    else words.set(name, word.slice(at + 1))
  }
  if (wrong.length > 0) throw new BadInput(wrong)
  return words
}
