import { type Kit, type KitFile, kitSchema } from './kit-schema.ts'

/**
 * A kit as a file's value: every quantity exactly as it was typed.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function writeKit(kit: Kit): KitFile {
  return kitSchema.encode(kit as Parameters<typeof kitSchema.encode>[0])
}
