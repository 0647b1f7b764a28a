import type { BoltSheet, Sheet, SheetBolt, SheetWear } from '../../sheet/index.ts'
import { marks } from '../text/sheet-text.ts'
import { htmlText } from './html-text.ts'
import { nextWords } from './next-words.ts'
import { ringSvg } from './ring-svg.ts'
import { titleBlock } from './title-block.ts'

const list = (items: readonly string[]): string => items.map((item) => `<li>${htmlText(item)}</li>`).join('')
const called = ({ letter, name }: SheetBolt): string => htmlText([letter, name].filter(Boolean).join(' '))

/** The second page: the bolt book, what is open first; wear, cautions, and room for a hand. */
export function pageTwo(sheet: Sheet, book: BoltSheet): string {
  const open = book.bolts.filter(({ done }) => !done)
  const done = book.bolts.filter(({ done, state }) => done && state !== 'closed')
  const untouched = book.bolts.filter(({ done, state }) => done && state === 'closed')
  return `<section class="page">${titleBlock(sheet, '2 of 2: bolt book')}
<h2>${htmlText(book.sentence)}</h2>${open.length > 0 ? openBolts(open) : ''}
${done.length > 0 ? `<h2>Done: ${done.length}</h2><ul class="closed">${done.map((bolt) => `<li>■ <b>${called(bolt)}, ${htmlText(bolt.wheel)}</b>: ${htmlText(bolt.state)}${bolt.toDo.length > 0 ? `<br>□ ${htmlText(bolt.toDo.map(({ sentence }) => sentence).join(' '))}` : ''}</li>`).join('')}</ul>` : ''}
${untouched.length > 0 ? `<p class="quiet"><b>Not opened in this job (${untouched.length}):</b> ${untouchedWords(untouched)}.</p>` : ''}
${book.troubles
  .filter((trouble) => !sheet.troubles.includes(trouble))
  .map((trouble) => `<p><small>? ${htmlText(trouble)}</small></p>`)
  .join('')}
${sheet.wear.length > 0 ? `<h2>Wear</h2>${wear(sheet.wear)}` : ''}
<h2>Cautions</h2><ul class="mind">${list([...new Set([...[...sheet.cautions, ...book.cautions].filter(isForHere), ...cautionsOf(open)])])}</ul>
<div class="next"><b>Next</b><span>${htmlText(open.length > 0 ? `${book.sentence} ${nextWords(sheet)}` : nextWords(sheet))}</span></div>
<div class="sign"><div>done by (initials, day)</div><div>second look by (initials, day)</div><div>handed over (initials, day)</div></div>
<footer>■ inside or done · ◧ inside, not proven · ▨ outside, not proven · ✕ outside. “Inside” means: probable by at least ${Math.round(sheet.threshold * 100)} %, the gauges’ own errors counted. The maker’s service information and local inspection law stand above this sheet.</footer></section>`
}

function openBolts(bolts: readonly SheetBolt[]): string {
  const rows = alike(bolts).map(([bolt, wheels]) => {
    const { doing } = bolt
    const figures = doing.figures
      .map(
        ({ label, value, unit, atFastener }) =>
          `${label} ${value}${unit === '°' ? '' : ' '}${unit}${atFastener ? ` (${atFastener})` : ''}`,
      )
      .join('; ')
    return `<tr><td>${wheels.map(() => '<span class="box"></span>').join(' ')}</td><th scope="row">${called(bolt)}<br><small>${htmlText(wheels.join(', '))}: ${htmlText(bolt.state)}</small></th>
<td>${ringSvg(doing.drawing)}<b>${htmlText(bolt.required)}</b>${figures ? `<br><small>${htmlText(figures)}</small>` : ''}</td>
<td><small>${htmlText(shortOf(bolt))}</small></td></tr>`
  })
  return `<table class="bolts"><thead><tr><th style="width:9mm"></th><th style="width:38mm">Joint</th><th style="width:76mm">Asked for; on the wrench</th><th>Still open</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
}

/** Whose values stand above the sheet is said at its foot, for everything on it. */
const isForHere = (caution: string): boolean => !/stand above this (sheet|book)/.test(caution)

/** Joints of several wheels that are in the same state, with the same value and the same things open, share a row. */
function alike(bolts: readonly SheetBolt[]): readonly (readonly [SheetBolt, readonly string[]])[] {
  const groups = new Map<string, [SheetBolt, string[]]>()
  for (const bolt of bolts) {
    const { joint, state, required } = bolt
    const key = JSON.stringify([joint, state, required, shortOf(bolt).replaceAll(bolt.wheel, '')])
    const group = groups.get(key) ?? [bolt, []]
    group[1].push(bolt.wheel)
    groups.set(key, group)
  }
  return [...groups.values()]
}

/** What is open without saying again which joint, and what value, it is. */
function shortOf({ toDo, doing }: SheetBolt): string {
  const said = toDo.map(({ sentence }) => sentence.replace(/^[^:]*: /, ''))
  return [...said, ...doing.blocked].map((text) => text.replace(/^./, (c) => c.toUpperCase())).join(' ')
}

/** Joints by name, each with the places where it is. */
function untouchedWords(bolts: readonly SheetBolt[]): string {
  const places = new Map<string, string[]>()
  for (const bolt of bolts) places.set(bolt.name, [...(places.get(bolt.name) ?? []), bolt.wheel])
  return [...places].map(([name, at]) => `${htmlText(name)} (${htmlText(at.join(', '))})`).join('; ')
}

/** Cautions of open joints, each said once with the joints it belongs to. */
function cautionsOf(bolts: readonly SheetBolt[]): readonly string[] {
  const said = new Map<string, Set<string>>()
  for (const { doing, name, letter } of bolts)
    for (const caution of doing.cautions)
      said.set(caution, (said.get(caution) ?? new Set()).add(letter ?? name))
  return [...said].map(
    ([caution, names]) => `${[...names].join(', ').replace(/^./, (c) => c.toUpperCase())}: ${caution}`,
  )
}

function wear(rows: readonly SheetWear[]): string {
  const body = rows.map(
    (w) =>
      `<tr><th scope="row">${htmlText([w.letter, w.name].filter(Boolean).join(' '))} <small>${htmlText([w.wheel, w.direction].filter(Boolean).join(', '))}</small></th><td class="figure">${htmlText(`${w.play.text} ${w.play.spread}`)}</td><td>${w.limits[0] ? `${htmlText(w.limits[0].text)} <small>${htmlText([w.limits[0].whose === 'not said' ? null : w.limits[0].whose, w.limits[0].jurisdiction ?? w.limits[0].source].filter(Boolean).join(', '))}</small>` : '–'}</td><td>${marks[w.verdict]} <small>${htmlText(w.sentence)}</small></td></tr>`,
  )
  return `<table><thead><tr><th>Joint</th><th>Play</th><th>Limit, whose</th><th>Stands</th></tr></thead><tbody>${body.join('')}</tbody></table>`
}
