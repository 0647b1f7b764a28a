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
    const near = nearest(
      all.map(({ id }) => id),
      wanted,
    )
    wrong.push(
      `There is no ${what} “${asked}” on this vehicle. ${
        near.length > 0
          ? `Did you mean ${near
              .slice(0, 6)
              .map((id) => `“${id}”`)
              .join(', ')}?`
          : `Known are ${all.map(({ id }) => `“${id}”`).join(', ')}.`
      }`,
    )
    return ''
  })
  if (wrong.length > 0) throw new BadInput(wrong)
  return [...new Set(found)]
}

/** Ids that have all the words asked for; without any, those that share one besides axle and side. */
function nearest(ids: readonly string[], wanted: string): readonly string[] {
  const asked = wanted.split(' ').filter(Boolean)
  const words = (id: string) => plain(id).split(' ')
  const all = ids.filter((id) => asked.length > 0 && asked.every((word) => words(id).includes(word)))
  if (all.length > 0) return all
  const telling = asked.filter((word) => !/^(front|rear|left|right)$/.test(word))
  return ids.filter((id) => telling.some((word) => words(id).includes(word)))
}
