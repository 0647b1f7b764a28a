import { findUnit, kindOfUnit } from './find-unit.ts'
import { type QuantityRefusal, quantityRefusal } from './quantity-refusal.ts'
import { readTerms, type Term } from './read-terms.ts'
import { chains, type Kind, kindNouns, type Unit, units } from './units.ts'

/** What a caller may say when a text is read. @source definition */
export interface ReadOptions {
  /** Field the text stands in; named in a refusal. */
  readonly at?: string | undefined
}

const notBelowZero: readonly Kind[] = ['mass', 'distance']

/** "12 mm, 12 cm, 12 in" */
const understood = (kind: Kind, number: string, extra: readonly Unit[]) =>
  [...units[kind], ...extra]
    .map(({ symbol }) => (/^[°′″]/.test(symbol) ? `${number}${symbol}` : `${number} ${symbol}`))
    .join(', ')

/** Reads a text as a quantity of one kind; SI, always finite. `extra` holds units that only the caller knows. */
export function readQuantity(
  text: string,
  kind: Kind,
  { at = 'text', extra = [] }: ReadOptions & { extra?: readonly Unit[] } = {},
): number {
  const refuse = (code: QuantityRefusal, sentence: string, remedy: string) =>
    quantityRefusal({ code, at, given: text, sentence, remedy })
  const example = understood(kind, '12', extra).split(', ')[0] ?? ''
  const { negative, terms } = readTerms(text, {
    at,
    example,
    pointGroups: kind === 'distance',
    hyphens: kind === 'length',
  })

  const unitOf = ({ value, unit }: Term): Unit => {
    const own =
      findUnit(unit, kind) ?? extra.find(({ names }) => names.includes(unit.toLowerCase().replace(/\.$/, '')))
    if (own) return own
    const list = understood(kind, String(value), extra)
    if (unit === '')
      throw refuse(
        'no-unit',
        terms.length === 1 ? `“${text}” has no unit.` : `“${value}” in “${text}” has no unit.`,
        `Write the unit. Understood would be: ${list}.`,
      )
    const other = kindOfUnit(unit)
    if (other)
      throw refuse(
        'wrong-kind',
        `“${text}” is ${kindNouns[other]}, and ${kindNouns[kind]} is wanted here.`,
        `Write ${kindNouns[kind]}. Understood would be: ${list}.`,
      )
    throw refuse(
      'unknown-unit',
      `“${unit}” in “${text}” is not a unit known for ${kindNouns[kind]}.`,
      `Understood would be: ${list}.`,
    )
  }

  let sum = 0
  let before: Unit | undefined
  for (const [i, term] of terms.entries()) {
    const unit = unitOf(term)
    if (before) {
      const chain = chains[kind] ?? []
      const rank = chain.indexOf(unit.symbol)
      const most = Math.round((before.times * unit.over) / (before.over * unit.times))
      if (rank < 0 || chain.indexOf(before.symbol) < 0 || rank <= chain.indexOf(before.symbol))
        throw refuse(
          'not-a-number',
          `“${text}” is more than one quantity: ${before.symbol} cannot be followed by ${unit.symbol}.`,
          `Write one number with its unit, for example ${example}.`,
        )
      if (term.value >= most)
        throw refuse(
          'out-of-range',
          `“${text}” has ${term.value} ${unit.symbol} behind ${before.symbol}, and ${most} ${unit.symbol} are one ${before.symbol}.`,
          `Write less than ${most} ${unit.symbol}, or ${unit.symbol} alone.`,
        )
    }
    if (i < terms.length - 1 && !Number.isInteger(term.value))
      throw refuse(
        'not-a-number',
        `“${text}” has a part of one ${unit.symbol} and a smaller unit behind it.`,
        `Write whole ${unit.symbol} before the smaller unit, or one number alone.`,
      )
    sum += (term.value * unit.times) / unit.over
    before = unit
  }
  if (!Number.isFinite(sum))
    throw refuse(
      'out-of-range',
      `“${text}” is larger than any number that can be computed with.`,
      'Check the digits.',
    )
  if (negative && sum > 0 && notBelowZero.includes(kind))
    throw refuse(
      'out-of-range',
      `“${text}” is below zero, and ${kindNouns[kind]} cannot be.`,
      'Write it without the minus.',
    )
  return negative && sum !== 0 ? -sum : sum
}
