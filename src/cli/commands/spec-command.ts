import { readSpec, readSpecCsv, specCsv, writeSpec } from '../../spec/index.ts'
import { writeWhole } from '../../store/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { wholeOf } from '../files/problem-lines.ts'
import { readJsonFile } from '../files/read-json-file.ts'
import { csvText } from './readings-command.ts'

/** What `spec` can be told. */
export interface SpecOptions {
  readonly to?: string
  readonly semicolons?: boolean
  readonly overwrite?: boolean
}

/** `axlewright spec FILE`: a spec sheet as a table, or a table as a spec sheet; which, the file's name says. */
export function specCommand(file: string, options: SpecOptions): Outcome {
  const isTable = /\.(csv|tsv|txt)$/i.test(file)
  const text = isTable
    ? `${JSON.stringify(writeSpec(wholeOf(file, readSpecCsv(csvText(file)))), null, 2)}\n`
    : specCsv(wholeOf(file, readSpec(readJsonFile(file))), { separator: options.semicolons ? ';' : ',' })
  if (options.to === undefined) return { out: text, code: 0 }
  writeWhole(options.to, text, { replace: options.overwrite ?? false })
  return { out: `${options.to}: ${isTable ? 'the spec sheet' : 'the table'}.\n`, code: 0 }
}
