import { Refusal } from '../../quantity/index.ts'

/** Why a carried file or a backup is not written or not taken. @source definition */
export type CarryRefusal = 'no-carried-file' | 'cut-off' | 'changed' | 'too-much' | 'strange-name'

/** A refusal about such a file. */
export const carryRefusal = (
  code: CarryRefusal,
  given: string,
  sentence: string,
  remedy = 'Copy the file again from where it was made, and compare their sizes.',
): Refusal<CarryRefusal> => new Refusal<CarryRefusal>({ code, at: 'file', given, sentence, remedy })
