import { BadInput } from '../files/outcome.ts'
import { wordsOf } from './words.ts'

type Words = ReadonlyMap<string, string>
type Wire = Record<string, unknown>

const list = (text: string): string[] =>
  text
    .split(/[;,](?!\d)/)
    .map((part) => part.trim())
    .filter(Boolean)

/** "0°: -0.3°, 180°: -0.1°"; a reading alone is one with the wheel as it stands. */
const turnsAndReadings = (text: string): Wire[] =>
  list(text).map((pair) => {
    const [turn = '', reading] = pair.split(':').map((part) => part.trim())
    return reading === undefined ? { wheelTurn: '0°', reading: turn } : { wheelTurn: turn, reading }
  })

/** "20° 1.35°": steer, then camber, then tilt where it was read. */
const places = (text: string): Wire[] =>
  list(text).map((place) => {
    const [steer = '', camber = '', tilt] = place.split(/\s+/)
    return { steer, camber, ...(tilt === undefined ? {} : { tilt }) }
  })

function sweeps(words: Words): Wire[] {
  const [left, right] = [places(words.get('left') ?? ''), places(words.get('right') ?? '')]
  if (left.length !== right.length)
    throw new BadInput([
      `There are ${left.length} readings to the left and ${right.length} to the right. A sweep needs one of each; give as many left as right.`,
    ])
  for (const [i, place] of left.entries())
    if (place['steer'] === right[i]!['steer'])
      throw new BadInput([
        `Both ends are steered by “${place['steer']}”. Steer to the left is plus and to the right minus, such as right="-20° -0.65°".`,
      ])
  return left.map((place, i) => ({ left: place, right: right[i] }))
}

const copied = (words: Words, names: readonly string[]): Wire =>
  Object.fromEntries(names.flatMap((name) => (words.has(name) ? [[name, words.get(name)]] : [])))

/** One entry of a job, in the wire form that a job file has. */
export interface WireEntry {
  readonly kind: string
  readonly data: Wire
}

const makers: Readonly<Record<string, (words: Words) => WireEntry>> = {
  inclinometer: (w) => ({
    kind: 'reading',
    data: {
      method: 'inclinometer',
      ...copied(w, ['wheel', 'gauge']),
      readings: turnsAndReadings(w.get('readings') ?? ''),
    },
  }),
  tape: (w) => ({
    kind: 'reading',
    data: {
      method: 'tape on a scribed line',
      ...copied(w, ['axle', 'tape', 'belowHub', 'levelled', 'radius']),
      front: list(w.get('front') ?? ''),
      rear: list(w.get('rear') ?? ''),
    },
  }),
  sweep: (w) => ({
    kind: 'reading',
    data: { method: 'steer sweep', ...copied(w, ['side', 'gauge', 'steerGauge']), sweeps: sweeps(w) },
  }),
  'run-out': (w) => ({
    kind: 'reading',
    data: {
      method: 'run-out',
      ...copied(w, ['wheel', 'gauge', 'diameter']),
      readings: turnsAndReadings(w.get('readings') ?? ''),
    },
  }),
  height: (w) => ({
    kind: 'ride height',
    data: { when: 'settled', ...copied(w, ['wheel', 'rule']), readings: list(w.get('readings') ?? '') },
  }),
  play: (w) => ({
    kind: 'play',
    data: {
      joint: 'joint',
      ...copied(w, ['wheel', 'gauge', 'moves', 'arm']),
      swings: list(w.get('swings') ?? ''),
    },
  }),
}

/** Words that say something about the floor, not about the reading. */
const around = ['bay', 'track', 'wheelbase']

const taken: Readonly<Record<string, readonly string[]>> = {
  inclinometer: ['wheel', 'gauge', 'readings'],
  tape: ['axle', 'tape', 'front', 'rear', 'belowHub', 'levelled', 'radius'],
  sweep: ['side', 'gauge', 'steerGauge', 'left', 'right'],
  'run-out': ['wheel', 'gauge', 'readings', 'diameter'],
  height: ['wheel', 'rule', 'readings'],
  play: ['wheel', 'gauge', 'moves', 'swings', 'arm'],
}

/**
 * The words of a command line as a job's entry. What the words hold is judged where every job is.
 *
 * @throws {BadInput} for a method or a word that is not known, or a word said twice
 */
export function observationWords(
  method: string,
  given: readonly string[],
): { entry: WireEntry; words: Words } {
  if (method === 'strings')
    throw new BadInput([
      'Strings give the toe of four wheels at once, which is too much for one line. Write them into a job file, as in examples/port-unit-07, and read it with "axlewright sheet".',
    ])
  const make = Object.hasOwn(makers, method) ? makers[method] : undefined
  if (!make)
    throw new BadInput([
      `“${method}” is no method. Known are ${Object.keys(makers).join(', ')}; "axlewright read --help" shows each.`,
    ])
  const words = wordsOf(given, [...taken[method]!, ...around], method)
  return { entry: make(words), words }
}
