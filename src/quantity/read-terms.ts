import { plainText } from './plain-text.ts'
import { quantityRefusal } from './quantity-refusal.ts'
import { readNumber } from './read-number.ts'

/** One number with what stands behind it: "3 1/2" and "in". */
export interface Term {
  readonly value: number
  /** As written, plain marks; empty when nothing stands there. */
  readonly unit: string
}

/** A text cut into its sign and its terms. */
export interface Terms {
  readonly negative: boolean
  readonly terms: readonly Term[]
}

const numberPattern =
  /\d+[ -]\d+ ?\/ ?\d+|\d+ ?\/ ?\d+|\d{1,3}(?: \d{3})+(?!\d)(?:[.,]\d+)?|[.,]?\d[\d.,]*(?:e[+-]?\d+)?/iy
const unitPattern = /(?:[^\d.,]|[.,](?!\d))*/y
const onlyMarks = /^[-+/±:;~=<>·]+$/

/**
 * Cuts a text into sign, numbers and units; what stands for a unit is not judged here.
 * `pointGroups`: a point may stand between thousands. `hyphens`: 5'-3" is 5 feet 3.
 */
export function readTerms(
  text: string,
  {
    at,
    example,
    pointGroups,
    hyphens,
  }: { at: string; example: string; pointGroups: boolean; hyphens: boolean },
): Terms {
  const plain = plainText(text)
  const write = `Write one number with its unit, for example ${example}.`
  const refuse = (code: 'not-a-number' | 'ambiguous-number' | 'empty', sentence: string, remedy = write) =>
    quantityRefusal({ code, at, given: text, sentence, remedy })
  if (plain === '') throw refuse('empty', 'Nothing is written here.')

  const sign = /^[+-] ?/.exec(plain)?.[0] ?? ''
  const terms: Term[] = []
  let place = sign.length
  while (place < plain.length) {
    numberPattern.lastIndex = place
    const token = numberPattern.exec(plain)?.[0]
    if (token === undefined || (terms.length > 0 && !/^\d/.test(token)))
      throw refuse('not-a-number', `“${text}” has no number where one is expected.`)
    const reading = readNumber(token, { pointGroups })
    if ('wrong' in reading)
      throw refuse('not-a-number', `“${token}” in “${text}” is not a number: ${reading.wrong}.`)
    place += token.length
    unitPattern.lastIndex = place
    const behind = unitPattern.exec(plain)?.[0] ?? ''
    place += behind.length
    const unit = hyphens ? behind.trim().replace(/^'-$/, "'") : behind.trim()
    if ('either' in reading) {
      const [a, b] = reading.either.map((value) => `${sign.trim()}${value} ${unit}`.trim())
      const clear = pointGroups ? a?.replace(/(\.\d{3})(?!\d)/, '$10') : a
      throw refuse('ambiguous-number', `“${text}” can be read as ${a} or as ${b}.`, `Write ${clear} or ${b}.`)
    }
    if (onlyMarks.test(unit) || /[-+±]$/.test(unit) || (unit === '' && place < plain.length))
      throw refuse('not-a-number', `“${text}” is not one number: “${unit || ' '}” stands between two.`)
    terms.push({ value: reading.value, unit })
  }
  if (terms.length === 0) throw refuse('not-a-number', `“${text}” has no number.`)
  return { negative: sign.startsWith('-'), terms }
}
