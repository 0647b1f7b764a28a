import type { PlanSheet } from '../../sheet/index.ts'
import { htmlText } from './html-text.ts'

type Band = PlanSheet['bands'][number]

/**
 * One band of the plan: how the vehicle stands, and its lines with boxes to tick. Its heading comes again on a new page.
 *
 * @param at place of the band, from 0
 * @param first number of its first line
 */
export function planBand(
  { station, lines }: Band,
  { at, first }: { readonly at: number; readonly first: number },
): string {
  const rows = lines.map((line, place) => row(line, first + place, lines[place - 1]?.place === line.place))
  const words = station.charAt(0).toUpperCase() + station.slice(1)
  return `<table><colgroup><col style="width:7mm"><col style="width:5mm"><col style="width:7mm"><col><col style="width:26mm"><col style="width:33mm"><col style="width:19mm"></colgroup>
<thead><tr><th colspan="7"><b>${at + 1}</b>${htmlText(words)}</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
}

function row(line: Band['lines'][number], number: number, samePlace: boolean): string {
  const letter = line.letter === null ? '' : `<span class="letter">${htmlText(line.letter)}</span>`
  const broken = line.broken
    .map(
      ({ rule, sentence, instead }) =>
        `<div class="wrong note">✕ ${rule === 'not yet' ? '' : `<b>${htmlText(rule)}</b> `}${htmlText(`${sentence} ${instead}`)}</div>`,
    )
    .join('')
  const cautions =
    line.cautions.length > 0
      ? `<ul class="care">${line.cautions.map((one) => `<li>${htmlText(one)}</li>`).join('')}</ul>`
      : ''
  return `<tr><td class="number">${number}</td><td><span class="box"></span></td><td>${letter}</td><td><span class="what">${htmlText(line.words)}</span>${broken}${cautions}</td><td>${htmlText(line.tool)}</td><td class="value">${htmlText(line.value)}${written(line)}</td><td>${samePlace ? '' : htmlText(line.place)}</td></tr>`
}

/** Room to write what belongs to the record, where no value stands. */
const written = ({ records, value }: Band['lines'][number]): string =>
  records.length > 0 && value === ''
    ? `<span class="note"><b>Write</b> ${htmlText(records.join('; '))}</span>`
    : ''
