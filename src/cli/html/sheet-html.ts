import type { Sheet, SheetNumber } from '../../sheet/index.ts'
import { marks } from '../text/sheet-text.ts'
import { dialSvg } from './dial-svg.ts'
import { dimensionSvg } from './dimension-svg.ts'
import { htmlText } from './html-text.ts'
import { paperStyle } from './paper-style.ts'

const number = (n: SheetNumber): string => htmlText(`${n.text} ${n.spread}`.trim())
const list = (items: readonly string[]): string => items.map((item) => `<li>${htmlText(item)}</li>`).join('')

function readings(sheet: Sheet): string {
  const rows = sheet.readings.map((r) => {
    const after = r.predicted ? `<br><small>after the moves ${number(r.predicted)}</small>` : ''
    const height = r.atSheetHeight
      ? `<br><small>at the sheet’s height ${number(r.atSheetHeight)}</small>`
      : ''
    return `<tr><th scope="row">${htmlText(r.label)}<br><small>${htmlText(r.of)}</small></th>
<td class="figure">${htmlText(r.text)} <small>${htmlText(r.spread)}</small>${height}${after}</td>
<td>${marks[r.verdict]} ${htmlText(r.verdict)}</td><td>${dimensionSvg(r)}</td></tr>`
  })
  return `<table><thead><tr><th>Reading</th><th>Value, 95 % interval</th><th>Stands</th><th>Between its limits</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
}

function moves({ moves: all }: Sheet): string {
  const rows = all.moves.map(
    (m) => `<li>${dialSvg(m)}<div><b>${htmlText(m.wheel)}, ${htmlText(m.name)}: ${htmlText(m.amount)}</b><br>
${htmlText([m.how, m.seenFrom].filter(Boolean).join(', '))}${m.warning ? `<br><em>Mind: ${htmlText(m.warning)}</em>` : ''}</div><span class="box"></span></li>`,
  )
  const said = all.made
    ? 'Made already: adjusters were turned after these readings. Read again before turning anything.'
    : all.sentence
  return `<p>${htmlText(said)}</p><ol class="moves">${rows.join('')}</ol>`
}

function clamp(sheet: Sheet): string {
  return sheet.clamp
    .map((pose) => {
      const bushes = pose.bushes.map(
        (
          b,
        ) => `<tr><th scope="row">${htmlText(`${b.letter} ${b.name}`)}</th><td class="figure">${number(b.twistHanging)}</td>
<td class="figure">${b.torque ? number(b.torque) : '–'}</td><td class="figure">${b.height ? number(b.height) : '–'}</td><td>${htmlText(b.rule)}</td></tr>`,
      )
      const turn = pose.armTurn ? ` The arm then turns ${number(pose.armTurn)} against the body.` : ''
      const raise = pose.raise
        ? `<p>Raise the hub from where it hangs by <b>${number(pose.raise)}</b>.${turn}</p>`
        : ''
      return `<section><h3>${htmlText(pose.title)}${pose.target ? `: ${number(pose.target)}` : ''}</h3><p>${htmlText(pose.targetWhy)}</p>${raise}
<table><thead><tr><th>Bush</th><th>Twist if tightened hanging</th><th>Torque of it</th><th>Height it costs</th><th>Rule</th></tr></thead><tbody>${bushes.join('')}</tbody></table>
<ul class="caution">${list(pose.cautions)}</ul></section>`
    })
    .join('')
}

/** The whole sheet as one self-contained page, made to be printed in one ink on A4 or Letter. */
export function sheetHtml(sheet: Sheet): string {
  const { title } = sheet
  const heights = sheet.heights.map(
    (h) =>
      `<tr><th scope="row">${htmlText(h.wheel)}</th><td class="figure">${number(h.number)}</td><td>${marks[h.verdict]} ${htmlText(h.verdict)}</td><td>${htmlText(h.limitText)}</td></tr>`,
  )
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${htmlText(`${title.vehicle}, job ${title.job}`)}</title><style>${paperStyle}</style></head><body>
<svg width="0" height="0" aria-hidden="true"><defs><pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="5" stroke="currentColor" stroke-width="0.5"/></pattern></defs></svg>
<header><h1>${htmlText(title.vehicle)}</h1><table class="block"><tr><td>job ${htmlText(title.job)}</td><td>${htmlText(title.workshop)}</td><td>${htmlText(title.round)}</td><td>${htmlText(title.method)}</td></tr><tr><td colspan="4">Values: ${htmlText(title.source)}</td></tr></table></header>
${sheet.troubles.length > 0 ? `<ul class="stop">${list(sheet.troubles)}</ul>` : ''}
<ul class="caution">${list(sheet.cautions)}</ul>
${heights.length > 0 ? `<h2>Ride heights</h2><table><tbody>${heights.join('')}</tbody></table>` : ''}
<h2>Readings</h2>${readings(sheet)}${sheet.advice.map((a) => `<p>${htmlText(a)}</p>`).join('')}
<h2>Moves</h2>${moves(sheet)}
<h2>Clamp pose</h2>${clamp(sheet)}
<h2>Next</h2><p>${htmlText(sheet.next.sentence)}</p>
<footer>“Inside” means: probable by at least ${Math.round(sheet.threshold * 100)} %, the gauges’ own errors counted. The maker’s service information and local inspection law stand above this sheet.</footer>
</body></html>
`
}
