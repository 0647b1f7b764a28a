import type { Sheet } from '../../sheet/index.ts'
import type { ExitCode } from '../files/outcome.ts'

/** 0 when everything that has a limit was read, is inside and proven; 1 when something fails or is not proven. */
export function verdictCode(sheet: Sheet): ExitCode {
  const verdicts = [...sheet.readings, ...sheet.heights].map((row) => row.verdict)
  const proven = verdicts.every((v) => v === 'inside' || v === 'no limit')
  return proven && sheet.unread.length === 0 && sheet.troubles.length === 0 && !sheet.moves.made ? 0 : 1
}
