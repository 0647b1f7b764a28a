import { type Problem, type Reading, readFile } from '../corner/index.ts'
import { type Spec, specSchema } from './spec-schema.ts'

/**
 * A spec sheet out of a file's value: quantities as typed with their SI values, or every fault at once.
 *
 * @param json plain value, as `readJsonText` gives it
 * @source own derivation: docs/methods/formats.md
 * @example readSpec({ format: 1 }).ok // false
 */
export function readSpec(json: unknown): Reading<Spec> {
  const read = readFile(json, specSchema, 'spec sheet')
  if (!read.ok) return read
  const problems = orderOf(read.value)
  return problems.length > 0 ? { ok: false, problems } : read
}

interface Range {
  readonly low: { readonly text: string; readonly value: number }
  readonly high: { readonly text: string; readonly value: number }
  readonly preferred?: { readonly text: string; readonly value: number } | undefined
}

/** Ends the wrong way round, and a preferred value outside them. */
function orderOf(spec: Spec): readonly Problem[] {
  const found: Problem[] = []
  const check = (field: string, { low, high, preferred }: Range) => {
    if (low.value > high.value)
      found.push({
        field,
        wrong: `The low end “${low.text}” is above the high end “${high.text}”.`,
        right: 'the lower value under "low"; mind the signs',
      })
    else if (preferred && (preferred.value < low.value || preferred.value > high.value))
      found.push({
        field: `${field}.preferred`,
        wrong: `“${preferred.text}” does not lie between “${low.text}” and “${high.text}”.`,
        right: 'a value inside the limits, or none',
      })
  }
  for (const [key, limit] of Object.entries(spec.limits)) if (limit) check(`limits.${key}`, limit)
  for (const end of ['front', 'rear'] as const) {
    const height = spec.rideHeight?.[end]
    if (height) check(`rideHeight.${end}`, height)
    for (const [joint, value] of Object.entries(spec.tightening?.[end] ?? {}))
      if ('low' in value) check(`tightening.${end}.${joint}`, value)
  }
  return found
}
