import type { PlanSheet } from '../../sheet/index.ts'
import { htmlText } from './html-text.ts'
import { planBand } from './plan-band.ts'
import { planStyle } from './plan-style.ts'

const box = '<span class="box"></span>'
const ticked = (name: string, text: string, under = '') =>
  `<li>${box}<span>${name ? `<b>${htmlText(name)}</b> ` : ''}${htmlText(text)}${under ? `<small>${htmlText(under)}</small>` : ''}</span></li>`
const part = (heading: string, list: string, body: string): string =>
  body ? `<h2>${heading}</h2><ul class="${list}">${body}</ul>` : ''

/** The plan as one self-contained page to print in one ink on A4 or Letter, hang up and tick off. */
export function planHtml(sheet: PlanSheet): string {
  const { title, goal, bands } = sheet
  let number = 1
  const tables = bands.map((band, at) => {
    const first = number
    number += band.lines.length
    return planBand(band, { at, first })
  })
  const shopping = sheet.shopping.flatMap(({ heading, items }) => items.map((item) => ticked(heading, item)))
  const missing = sheet.missing.map((item) => ticked('', item))
  const troubles = [...judged(sheet), ...sheet.troubles]
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${htmlText(`Plan: ${title.vehicle}, job ${title.job}`)}</title><style>${planStyle}</style></head><body>
<header><div><b>${htmlText(title.vehicle)}</b><br>${htmlText(title.workshop)}</div><div><small>job</small>${htmlText(title.job)}</div><div><small>plan, values</small>${htmlText(sheet.size)}<br>${htmlText(title.source || 'no sheet of values')}</div></header>
<h1>${htmlText(capital(goal.join(', ')))}</h1>
<p>${htmlText(capital(sheet.time))}. ${htmlText(sheet.proof)}</p>
${troubles.length > 0 ? `<ul class="stop">${troubles.map((one) => `<li>${htmlText(one)}</li>`).join('')}</ul>` : ''}
${part('What failed', 'mind', sheet.branches.map(({ words, because }) => `<li>${htmlText(`${capital(because)}. ${words}`)}</li>`).join(''))}
<ul class="mind">${sheet.cautions.map((one) => `<li>${htmlText(one)}</li>`).join('')}</ul>
${part('Before anything is undone', 'have', [...shopping, ...missing].join(''))}
${tables.join('\n')}
${part('What follows from it', 'after', sheet.consequences.map(({ words, because }) => ticked('', words, because)).join(''))}
${sheet.alternatives.length > 0 ? `<h2>Another way</h2>${sheet.alternatives.map((one) => `<p>${htmlText(one)}</p>`).join('')}` : ''}
<div class="sign"><div>Done by, date</div><div>Second look by, date</div><div>Handed over to, date</div></div>
<footer>Letters are those of the joints on the drawing. What is ticked here is not yet in the log: write it down there.</footer>
</body></html>
`
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

function judged({ against, brokenLines }: PlanSheet): readonly string[] {
  const rules =
    brokenLines === 0
      ? ''
      : `This order breaks rules in ${brokenLines === 1 ? 'one line' : `${brokenLines} lines`}: do not work by it.`
  const said = [rules, against && `${capital(against)}.`].filter(Boolean).join(' ')
  return said ? [said] : []
}
