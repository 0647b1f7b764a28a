import { type Spec, type SpecFile, specSchema } from './spec-schema.ts'

/**
 * A spec sheet as a file's value: every quantity exactly as it was typed.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function writeSpec(spec: Spec): SpecFile {
  return specSchema.encode(spec as Parameters<typeof specSchema.encode>[0])
}
