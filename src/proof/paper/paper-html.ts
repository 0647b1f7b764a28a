import { codeSvg } from './code-svg.ts'
import { pairSvg } from './pair-svg.ts'
import type { Paper, PaperSize } from './paper.ts'
import type { PaperBlock, PaperCell } from './paper-block.ts'
import { paperBlocks } from './paper-blocks.ts'
import { paperStyle } from './paper-style.ts'
import { demoWords, footWords, paperTitle, signPlaces } from './paper-title.ts'
import { escaped } from './printed.ts'
import { stateSvg } from './state-svg.ts'

/**
 * A proof as one self-contained page, made to be printed in one ink: it asks for no address.
 *
 * @source own derivation: docs/methods/record.md
 */
export function paperHtml(paper: Paper, size: PaperSize): string {
  const { sheet, seal, version } = paper
  const { title } = sheet
  const [job, days, mileage, ...more] = paperTitle(sheet).map(
    ([label, text]) => `<small>${label}</small>${escaped(text)}`,
  )
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${escaped(`${title.vehicle}, job ${title.job}: proof sheet`)}</title><style>${paperStyle(size)}</style></head><body>
<header><div><h1>${escaped(title.vehicle)}</h1>${escaped(title.workshop)}<br><b>Proof sheet</b></div><div>${job}</div><div>${days}</div><div>${mileage}</div><div>${more.join('')}</div></header>
${title.invented ? `<p class="demo">${demoWords}</p>` : ''}
<section class="seal"><div><p class="said">${escaped(sheet.sentence)}</p>
<p class="said">${escaped(seal.head)}.</p>
${seal.lines.map((text) => `<p>${escaped(text)}</p>`).join('\n')}
${seal.fingerprint === null ? '' : `<p>Fingerprint of the sign-off: <span class="figure">${escaped(seal.fingerprint)}</span></p>`}</div>
<div>${seal.code === null ? '' : codeSvg(seal.code)}</div></section>
${paperBlocks(sheet).map(block).join('\n')}
<div class="sign">${signPlaces.map((place) => `<div>${place}</div>`).join('')}</div>
<footer>${escaped(footWords(version))}</footer>
</body></html>
`
}

function block(one: PaperBlock): string {
  const heading = `<h2>${escaped(one.heading)}</h2>`
  if (one.kind === 'list')
    return `<section>${heading}<ul style="columns:${one.columns}"${one.isBoxed ? ' class="boxed"' : ''}>${one.items
      .map((item) => `<li${item.state ? ' class="stated"' : ''}>${inline(item, ': ')}</li>`)
      .join('')}</ul></section>`
  const isShort = one.rows.length <= 6
  return `<section${isShort ? ' class="short"' : ''}>${heading}<table><colgroup>${one.widths.map((w) => `<col style="width:${w}%">`).join('')}</colgroup><thead><tr>${one.head
    .map((text) => `<th scope="col">${whole(text)}</th>`)
    .join('')}</tr></thead><tbody>${one.rows
    .map((row) => `<tr>${row.map((cell) => `<td>${inline(cell, ' ')}</td>`).join('')}</tr>`)
    .join('\n')}</tbody></table>${one.note ? `<p class="note">${escaped(one.note)}</p>` : ''}</section>`
}

const inline = ({ state, bold, text, small, pair }: PaperCell, between: string): string =>
  [
    state ? stateSvg(state) : '',
    bold ? `<b>${whole(bold)}</b>${text ? between : ''}` : '',
    text ? whole(text) : '',
    small ? `<small>${whole(small)}</small>` : '',
    pair ? pairSvg(pair) : '',
  ].join('')

/** A day is not torn apart at its hyphens. */
const whole = (text: string): string =>
  escaped(text).replace(/\d{4}-\d\d-\d\d/g, (day) => `<span class="day">${day}</span>`)
