import type { PlanSheetLine, SheetCorner } from '../../../sheet/index.ts'
import { wheelOf } from '../angles/wheel-of.ts'

/** The drawing of the corner at which a line is done; null where it has no wheel, or the wheel is not drawn. */
export const cornerOfLine = (
  corners: readonly SheetCorner[],
  line: PlanSheetLine | null,
): SheetCorner | null => corners.find((corner) => wheelOf(corner) === line?.wheel) ?? null
