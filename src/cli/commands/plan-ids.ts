import type { Assembly } from '../../plan/index.ts'
import { BadInput } from '../files/outcome.ts'

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim()

/**
 * Parts or joints that a person named, by the assembly's ids. A name may be written with blanks or hyphens; one that
 * stands on both sides needs its side. Everything that is not found is told at once.
 *
 * @param nodes the assembly's parts, or its joints
 * @param what "part" or "joint"
 */
export function planIds(
  nodes: Assembly['parts'] | Assembly['joints'],
  given: readonly string[],
  what: 'part' | 'joint',
): readonly string[] {
  const all = Object.values(nodes).filter(({ id }) => id !== 'body')
  const wrong: string[] = []
  const found = given.map((asked) => {
    const wanted = plain(asked)
    const one = all.find(({ id, called }) => plain(id) === wanted || plain(called) === wanted)
    if (one) return one.id
    const near = all.filter(({ id }) => shares(plain(id), wanted))
    wrong.push(
      `There is no ${what} “${asked}” on this vehicle. ${
        near.length > 0
          ? `Did you mean ${near
              .slice(0, 6)
              .map(({ id }) => `“${id}”`)
              .join(', ')}?`
          : `Known are ${all.map(({ id }) => `“${id}”`).join(', ')}.`
      }`,
    )
    return ''
  })
  if (wrong.length > 0) throw new BadInput(wrong)
  return [...new Set(found)]
}

/** All words of one stand in the other. */
function shares(id: string, wanted: string): boolean {
  const words = id.split(' ')
  const asked = wanted.split(' ').filter(Boolean)
  return (
    asked.length > 0 && (asked.every((word) => words.includes(word)) || words.every((w) => asked.includes(w)))
  )
}
