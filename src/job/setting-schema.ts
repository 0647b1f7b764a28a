import * as z from 'zod'
import { parseAngle, parseLength, parseTurns, Refusal } from '../quantity/index.ts'

/** A setting as typed: which unit an adjuster has is not known to the log, so the text says it. @source definition */
export interface TypedSetting {
  readonly text: string
  readonly value: number
  readonly unit: 'rad' | 'm' | 'turn'
}

const right =
  'a setting with its unit: "-12°" of a washer, "3 mm" of shims or a slot, "5/12 turn" of a thread'
const ways = [
  ['rad', parseAngle],
  ['m', parseLength],
  ['turn', parseTurns],
] as const

/** Where a unit that only one kind has stands in the text, its value; a refusal is dear in a long log. */
function atOnce(text: string): TypedSetting | null {
  const way = /turn/.test(text) ? ways[2] : /\dmm|\d mm/.test(text) ? ways[1] : null
  if (way === null) return null
  try {
    return { text, value: way[1](text), unit: way[0] }
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal
    return null
  }
}

/**
 * The setting of any adjuster, as typed.
 *
 * @source definition
 */
export const typedSetting = z.codec(
  z.string({ error: () => right }).describe(right),
  z.custom<TypedSetting>(),
  {
    decode: (text, ctx): TypedSetting => {
      const known = atOnce(text)
      if (known) return known
      let first: Refusal | null = null
      for (const [unit, parse] of ways)
        try {
          return { text, value: parse(text), unit }
        } catch (refusal) {
          if (!(refusal instanceof Refusal)) throw refusal
          first ??= refusal
          // Another kind may understand this unit; what is no number at all is told as it is.
          if (refusal.code !== 'wrong-kind' && refusal.code !== 'unknown-unit') break
        }
      ctx.issues.push({
        code: 'custom',
        input: text,
        message: first?.sentence ?? 'It is no setting.',
        params: { right },
      })
      return z.NEVER
    },
    encode: ({ text }) => text,
  },
)
