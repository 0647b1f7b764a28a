import { Refusal } from '../quantity/index.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import { sentenceStart } from './sentence-start.ts'
import { spokenPlace } from './spoken-place.ts'

/** What a value has to be: a point, a number, or a record or list of such. */
export type Kind = 'point' | 'number' | { readonly [name: string]: Kind } | readonly Kind[]

/** No coordinate is larger than this, m; beyond it squares lose their meaning. */
const huge = 1e6

/**
 * The value is made as it is said: every named part is there and of its kind.
 *
 * @throws {Refusal} `bad-input` at the first part that is not
 */
export function checkKinds(value: unknown, kind: Kind, at: string): void {
  if (kind === 'number') {
    if (typeof value !== 'number') throw no(at, 'not a number', 'Give it as a number.', value)
    return
  }
  if (kind === 'point') {
    const three = Array.isArray(value) && value.length === 3 && value.every((n) => typeof n === 'number')
    if (!three) throw no(at, 'not three numbers', 'Give x, y and z of this point in metres.', value)
    if (value.some((n) => Math.abs(n) > huge))
      throw no(at, `more than ${huge} m away`, 'Give the coordinates in metres.', value)
    return
  }
  if (typeof value !== 'object' || value === null) throw no(at, 'missing', 'Give it with its points.', value)
  if (Array.isArray(kind) && (!Array.isArray(value) || value.length !== kind.length))
    throw no(at, `not a list of ${kind.length}`, 'Give as many as there are.', value)
  for (const [name, part] of Object.entries(kind))
    checkKinds((value as Record<string, unknown>)[name], part, at === '' ? name : `${at}.${name}`)
}

const no = (at: string, what: string, remedy: string, value: unknown): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({
    code: 'bad-input',
    at: at === '' ? 'points' : at,
    given: JSON.stringify(value) ?? 'nothing',
    sentence: `${at === '' ? 'What was given' : sentenceStart(spokenPlace(at))} is ${what}.`,
    remedy,
  })
