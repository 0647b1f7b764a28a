import { type Reading, readFile } from '../corner/index.ts'
import { endsInOrder } from './ends-in-order.ts'
import { type Spec, specSchema } from './spec-schema.ts'

/**
 * A spec sheet out of a file's value: quantities as typed with their SI values, or every fault at once.
 *
 * @param json plain value, as `readJsonText` gives it
 * @source own derivation: docs/methods/formats.md
 * @example readSpec({ format: 1 }).ok // false
 */
export function readSpec(json: unknown): Reading<Spec> {
  return readFile(json, specSchema, 'spec sheet', endsInOrder)
}
