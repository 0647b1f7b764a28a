import { words } from '../corner/index.ts'

/**
 * Words that say who a person is, or lead to one. In a sealed entry a token stands in their place, and they themselves
 * beside the log, where they can be erased. What is personal is declared by this, and nowhere else.
 *
 * @param about what stands there
 * @source own derivation: docs/methods/record.md
 */
export const personalText = (about: string) => words.meta({ description: about, personal: true })
