import bold from 'pdfmake/fonts/Roboto/Roboto-Medium.ttf?url'
import normal from 'pdfmake/fonts/Roboto/Roboto-Regular.ttf?url'
import type { PaperFonts } from '../../proof/index.ts'

/** The font that a printed proof carries, from the page's own address. */
export async function paperFonts(): Promise<PaperFonts> {
  const [regular, medium] = await Promise.all([normal, bold].map(fileAt))
  return { normal: regular!, bold: medium! }
}

async function fileAt(address: string): Promise<Uint8Array> {
  const answer = await fetch(address)
  if (!answer.ok) throw new Error(`The font of the paper cannot be loaded (${answer.status}).`)
  return new Uint8Array(await answer.arrayBuffer())
}
