import type { Sheet } from '../../sheet/index.ts'
import type { ExitCode } from '../files/outcome.ts'

/** 0 when everything that has a limit is inside and proven; 1 when something fails or is not proven. */
export function verdictCode(sheet: Sheet): ExitCode {
  const verdicts = [...sheet.readings, ...sheet.heights].map((row) => row.verdict)
  return verdicts.every((v) => v === 'inside' || v === 'no limit') && sheet.troubles.length === 0 ? 0 : 1
}
