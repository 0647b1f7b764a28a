import { Refusal } from '../quantity/index.ts'
import type { StoreRefusal } from './store-refusal.ts'

/** A refusal of this room. @source definition */
export const refused = (
  code: StoreRefusal,
  given: string,
  sentence: string,
  remedy: string,
): Refusal<StoreRefusal> => new Refusal<StoreRefusal>({ code, at: 'place', given, sentence, remedy })
