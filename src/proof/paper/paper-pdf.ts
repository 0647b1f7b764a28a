import type { Paper, PaperSize } from './paper.ts'
import { paperDefinition } from './paper-definition.ts'

/** The font that a printed proof carries: files of Roboto, regular and medium, as the PDF library ships them. @source definition */
export interface PaperFonts {
  readonly normal: Uint8Array
  readonly bold: Uint8Array
}

/** As the files call themselves: drawings find the font by that name. */
const names = { normal: 'Roboto-Regular', bold: 'Roboto-Medium' } as const

/**
 * A proof as a PDF that carries its own font and asks for no address and no file. The same paper gives the same bytes.
 *
 * @param created the moment that stands in the file: that of the last entry, not of the printing
 * @source own derivation: docs/decisions/0015-the-proof-on-paper.md
 */
export async function paperPdf(
  paper: Paper,
  {
    size,
    fonts,
    created,
  }: { readonly size: PaperSize; readonly fonts: PaperFonts; readonly created: string | null },
): Promise<Uint8Array> {
  const { default: pdfmake } = await import('pdfmake')
  pdfmake.setUrlAccessPolicy(() => false)
  pdfmake.setLocalAccessPolicy?.(() => false)
  for (const weight of ['normal', 'bold'] as const)
    pdfmake.virtualfs.writeFileSync(names[weight], fonts[weight])
  pdfmake.setFonts({ Roboto: names })
  return pdfmake.createPdf(paperDefinition(paper, size, new Date(created ?? 0))).getBuffer()
}
