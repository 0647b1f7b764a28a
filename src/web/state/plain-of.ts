import { Refusal } from '../../quantity/index.ts'
import type { Plain } from './messages.ts'

/** A refusal keeps its own words; anything else is a fault of the program and says so. */
export function plainOf(error: unknown): Plain {
  return error instanceof Refusal
    ? { sentence: error.sentence, remedy: error.remedy }
    : {
        sentence: `Something in the program is wrong: ${error instanceof Error ? error.message : String(error)}.`,
        remedy: 'Undo the last change to go on; what was typed is kept.',
      }
}
