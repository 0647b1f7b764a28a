import type { LinkageRefusal } from '../../linkage/index.ts'
import { Refusal } from '../../quantity/index.ts'

/** A row's answer when it has none: what kind of fault, and in plain words. */
export interface RowRefusal {
  readonly error: string
  readonly sentence: string
}

/** `bad-input` of the exchange file. */
export const badInput = (at: string, sentence: string, remedy: string): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({ code: 'bad-input', at, sentence, remedy })

/** The kind of a row that met a fault of this program: neither an answer nor a refusal. */
const ourFault = 'fault-of-the-program'

/** Runs one row; a refusal becomes its answer. A fault of ours spoils its row, never the file. */
export function answered<T>(row: () => T): T | RowRefusal {
  try {
    return row()
  } catch (error) {
    if (error instanceof Refusal) return { error: error.code, sentence: `${error.sentence} ${error.remedy}` }
    const why = error instanceof Error ? error.message : String(error)
    return { error: ourFault, sentence: `This row met a fault of the program itself: ${why}` }
  }
}

/** Whether any row of an answer met a fault of the program. */
export const hasOurFault = (output: unknown): boolean =>
  JSON.stringify(output).includes(`"error":"${ourFault}"`)

/** Whether a row was refused. */
export const isRefused = (row: object): row is RowRefusal => 'sentence' in row
