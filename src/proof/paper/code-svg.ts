import qrcode from 'qrcode-generator'

/** Clear squares around a code. @source ISO/IEC 18004, 5.3.8 */
const quiet = 4

/**
 * Text as a square code, drawn as one path: no picture is fetched, and it prints sharp at any size.
 *
 * @source ISO/IEC 18004 (by the library qrcode-generator; error correction level M)
 */
export function codeSvg(text: string): string {
  const code = qrcode(0, 'M')
  code.addData(text, 'Byte')
  code.make()
  const size = code.getModuleCount()
  const rows: string[] = []
  for (let row = 0; row < size; row++)
    for (let column = 0; column < size; column++) {
      if (!code.isDark(row, column)) continue
      let run = 1
      while (column + run < size && code.isDark(row, column + run)) run++
      rows.push(`M${column + quiet} ${row + quiet}h${run}v1h-${run}z`)
      column += run - 1
    }
  const all = size + 2 * quiet
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${all} ${all}" width="${all}" height="${all}" role="img" aria-label="square code with the id of the sign-off"><path d="${rows.join('')}" fill="black"/></svg>`
}
