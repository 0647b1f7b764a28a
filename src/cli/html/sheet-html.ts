import type { BoltSheet, Sheet } from '../../sheet/index.ts'
import { htmlText } from './html-text.ts'
import { pageOne } from './page-one.ts'
import { pageTwo } from './page-two.ts'
import { paperStyle } from './paper-style.ts'

/** The whole sheet as one self-contained page, made to be printed in one ink on two sides of A4 or Letter. */
export function sheetHtml(sheet: Sheet, book: BoltSheet): string {
  const { title } = sheet
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${htmlText(`${title.vehicle}, job ${title.job}`)}</title><style>${paperStyle}</style></head><body>
<svg width="0" height="0" aria-hidden="true" style="position:absolute"><defs><pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="5" stroke="currentColor" stroke-width="0.5"/></pattern></defs></svg>
${pageOne(sheet)}
${pageTwo(sheet, book)}
</body></html>
`
}
