import type { SheetNumber } from '../../sheet/index.ts'
import { htmlText } from './html-text.ts'

/** A number with its spread, the unit once: "23 ± 18 N·m". */
export function numberText({ text, spread }: SheetNumber): string {
  const unit = /[^\d.,−-]*$/.exec(text)![0]
  const once = unit !== '' && spread.endsWith(unit) ? text.slice(0, -unit.length) : text
  return htmlText(`${once} ${spread}`.trim())
}
