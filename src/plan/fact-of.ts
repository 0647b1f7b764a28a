import type { State } from './state.ts'

/** What a key says where nothing was changed yet, by its first word or words. */
const untouched: readonly (readonly [start: string, value: string])[] = [
  ['joint ', 'closed'],
  ['taper ', 'seated'],
  ['pin ', 'in'],
  ['fastener ', 'old'],
  ['mark ', 'not recorded'],
  ['mending ', 'not begun'],
  ['look ', 'not yet'],
  ['box ', 'wrong part'],
  ['part ', 'fitted'],
  ['compared ', 'not yet'],
  ['energy ', 'held by its set'],
  ['axle stands ', 'none'],
  ['arm ', 'free'],
  ['pads ', 'not moved'],
  ['line ', 'tight'],
  ['lamp ', 'as found'],
  ['adjuster ', 'as found'],
  ['support ', 'on its wheels'],
  ['settled ', 'yes'],
  ['again settled ', 'no'],
  ['camber and caster ', 'as found'],
  ['toe ', 'as found'],
  ['reading ', 'none'],
  ['target ', 'not known'],
  ['stand gap ', 'none'],
  ['wheel off ', 'never'],
  ['stage ', 'whole'],
  ['chocks', 'not set'],
  ['steering wheel', 'free'],
  ['steering', 'straight'],
  ['shaft', 'whole'],
  ['trolley jack', 'free'],
  ['tail support', 'none'],
  ['levelling', 'on'],
  ['level sensor', 'as found'],
  ['pedal', 'firm'],
  ['heights', 'not recorded'],
  ['pressures', 'as found'],
  ['clearance', 'not seen'],
  ['appointment', 'none'],
  ['fit to drive', 'not seen'],
  ['airbag', 'live'],
  ['road', 'not driven'],
  ['handover', 'not yet'],
  ['swapped ', 'no'],
  ['cap ', 'none'],
  ['tied ', 'no'],
  ['learned ', 'not yet'],
  ['centring', 'not seen'],
  ['tag', 'none'],
  ['ignition key', 'in use'],
]

/**
 * What the state says of a key; of one that nothing has touched, what is so on a vehicle that stands on its wheels.
 *
 * @source definition
 * @example factOf({}, 'joint front left wheel-nuts') // closed
 */
export function factOf(state: State, key: string): string {
  const known = state[key]
  if (known !== undefined) return known
  const space = key.indexOf(' ')
  const word = space < 0 ? key : key.slice(0, space)
  return byWord.get(word)?.find(([start]) => key.startsWith(start))?.[1] ?? ''
}

/** The same by the first word of a key. */
const byWord = new Map<string, (readonly [start: string, value: string])[]>()
for (const entry of untouched) {
  const word = entry[0].trim().split(' ', 1)[0]!
  byWord.set(word, [...(byWord.get(word) ?? []), entry])
}
