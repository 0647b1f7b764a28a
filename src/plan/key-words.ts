import type { Assembly } from './assembly.ts'

const beside: Readonly<Record<string, string>> = {
  taper: 'the taper of ',
  pin: 'the pin of ',
  fastener: 'the fastener of ',
  mark: 'the mark of ',
  compared: 'the comparison of ',
  energy: 'the load of ',
  line: 'the line at ',
  lamp: 'the lamp of ',
  adjuster: 'the setting of ',
}
const ofAxle: readonly (readonly [start: string, words: (where: string) => string])[] = [
  ['support ', (axle) => `the ${axle} axle`],
  ['axle stands ', (axle) => `the ${axle} axle beam`],
  ['again settled ', (axle) => `the settling of the ${axle} after its last move`],
  ['settled ', (axle) => `the settling of the ${axle}`],
  ['camber and caster ', (axle) => `${axle} camber and caster`],
  ['reading ', (axle) => `the ${axle} reading`],
  ['toe ', (axle) => `the ${axle} toe`],
  ['arm ', (where) => `the ${where} arm`],
  ['trolley jack', () => 'the trolley jack'],
]

/**
 * What a key of the state is about, for people.
 *
 * @source definition
 * @example keyWords({ joints: {}, parts: {}, adjusters: {} }, 'support front') // the front axle
 */
export function keyWords(
  { joints, parts, adjusters }: Pick<Assembly, 'joints' | 'parts' | 'adjusters'>,
  key: string,
): string {
  const space = key.indexOf(' ')
  const id = key.slice(space + 1)
  const node = joints[id] ?? parts[id] ?? adjusters[id]
  if (node) return `${beside[key.slice(0, space)] ?? ''}the ${node.called}`
  const known = ofAxle.find(([start]) => key.startsWith(start))
  return known ? known[1](key.slice(known[0].length)) : `the ${key}`
}
