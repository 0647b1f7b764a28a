import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { PaperFonts } from '../../proof/index.ts'

/** The font that the PDF library brings with it. */
export function paperFonts(): PaperFonts {
  const { resolve } = createRequire(import.meta.url)
  const file = (weight: string) => readFileSync(resolve(`pdfmake/fonts/Roboto/Roboto-${weight}.ttf`))
  return { normal: file('Regular'), bold: file('Medium') }
}
