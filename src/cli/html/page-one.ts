import type { Sheet } from '../../sheet/index.ts'
import { marks } from '../text/sheet-text.ts'
import { axleSvg } from './axle-svg.ts'
import { dialSvg } from './dial-svg.ts'
import { dimensionSvg } from './dimension-svg.ts'
import { htmlText } from './html-text.ts'
import { nextWords, strip } from './next-words.ts'
import { numberText } from './number-text.ts'
import { reachSvg } from './reach-svg.ts'
import { titleBlock } from './title-block.ts'

const list = (items: readonly string[]): string => items.map((item) => `<li>${htmlText(item)}</li>`).join('')

/** The first page: angles, what to turn, the maps, the drawing and the pose in which bushes are final. */
export function pageOne(sheet: Sheet): string {
  const end = sheet.corners.some(({ title }) => title.includes('front')) ? 'front' : 'rear'
  const drawn = sheet.corners.filter(({ title }) => title.includes(end))
  const drawing = axleSvg(drawn)
  return `<section class="page">${titleBlock(sheet, '1 of 2: angles')}
${sheet.troubles.length > 0 ? `<ul class="stop">${list(sheet.troubles)}</ul>` : ''}
<div class="two"><div>${heights(sheet)}<h2>Readings</h2>${readings(sheet)}${sheet.advice.map((a) => `<p>${htmlText(a)}</p>`).join('')}</div>
<div><h2>Moves</h2>${moves(sheet)}
${sheet.reach.length > 0 ? `<h2>Reach</h2><div class="maps">${sheet.reach.map(reachSvg).join('')}</div>` : ''}
${drawing ? `<h2>The ${end} axle, from the front</h2><div class="drawing">${drawing}</div><p><small>Full: ride pose; dashed: as it stands. Heavy ring: carries an adjuster.</small></p>` : ''}</div></div>
${clamp(sheet)}
<div class="next"><b>Next</b><span>${htmlText(nextWords(sheet))}</span></div></section>`
}

function heights(sheet: Sheet): string {
  if (sheet.heights.length === 0) return ''
  const rows = sheet.heights.map(
    (h) =>
      `<td><b>${htmlText(h.wheel)}</b> <span class="figure">${numberText(h.number)}</span><br><small>${marks[h.verdict]} ${htmlText(h.limitText)}</small></td>`,
  )
  return `<h2>Ride heights</h2><table><tbody><tr>${rows.join('')}</tr></tbody></table>`
}

function readings(sheet: Sheet): string {
  const rows = sheet.readings.map((r) => {
    const after = r.predicted ? `<br><small>▼ after moves ${numberText(r.predicted)}</small>` : ''
    const height = r.atSheetHeight
      ? `<br><small>at sheet’s height ${numberText(r.atSheetHeight)}</small>`
      : ''
    return `<tr><th scope="row">${htmlText(r.label)} <small>${htmlText(r.of)}</small></th>
<td class="figure">${numberText(r)}${height}${after}</td>
<td>${marks[r.verdict]} <small>${htmlText(r.verdict)}</small></td><td>${dimensionSvg(r)}</td></tr>`
  })
  return `<table class="readings"><thead><tr><th style="width:28mm">Reading</th><th style="width:31mm">Value, 95 % interval</th><th style="width:14mm">Stands</th><th>Between its limits</th></tr></thead><tbody>${rows.join('')}</tbody></table>`
}

function moves({ moves: all, next }: Sheet): string {
  const rows = all.moves.map(
    (
      m,
    ) => `<li><b>${m.order}</b>${dialSvg(m) || '<span></span>'}<div><b class="big">${htmlText(m.amount)}</b><br><b>${htmlText(m.name)}, ${htmlText(m.wheel)}</b><br>
${htmlText([m.how, m.seenFrom].filter(Boolean).join(', '))}${m.warning ? `<br><em>Mind: ${htmlText(m.warning)}</em>` : ''}</div><span class="box"></span></li>`,
  )
  const said = all.made
    ? 'Made already: adjusters were turned after these readings. Read again before turning anything.'
    : all.sentence
  // What the strip at the foot says is not said twice.
  const first = said === next.sentence && said.length <= strip ? '' : `<p>${htmlText(said)}</p>`
  const wheel =
    all.steeringWheel && !all.made ? `<p><small>${htmlText(all.steeringWheel.sentence)}</small></p>` : ''
  return `${first}<ol class="moves">${rows.join('')}</ol>${wheel}`
}

function clamp({ clamp: poses }: Sheet): string {
  if (poses.length === 0) return ''
  const said = poses.map((pose) => {
    const bushes = pose.bushes.map(
      (b) =>
        `<tr><th scope="row">${htmlText(`${b.letter} ${b.name}`)}</th><td>${numberText(b.twistHanging)}</td><td>${b.torque ? numberText(b.torque) : '–'}</td><td>${b.height ? numberText(b.height) : '–'}</td></tr>`,
    )
    const table =
      bushes.length > 0
        ? `<table><thead><tr><th>Final hanging, it keeps</th><th>twist</th><th>torque</th><th>height</th></tr></thead><tbody>${bushes.join('')}</tbody></table>`
        : ''
    const turn = pose.armTurn ? `, arm turns ${numberText(pose.armTurn)}` : ''
    const raise = pose.raise ? `raise ${numberText(pose.raise)}${turn}` : ''
    const height = pose.target ? `to ${numberText(pose.target)}: ` : ''
    const where = htmlText(capital(wheelOf(pose.title)))
    return `<div><h3>${where}, ${height}${raise}</h3>${table}</div>`
  })
  // What is said of each of them is said once.
  const reasons = [...new Set(poses.map(({ targetWhy }) => targetWhy))]
  const why = reasons.map((reason) => {
    const wheels = poses.filter(({ targetWhy }) => targetWhy === reason).map(({ title }) => wheelOf(title))
    return reasons.length > 1 ? `${capital(wheels.join(', '))}: ${reason}` : reason
  })
  const cautions = [...new Set(poses.flatMap((pose) => pose.cautions))]
  return `<h2>Clamp pose: bush bolts are final only here</h2><p><small>Raise the hub from where it hangs; the arm turns against the body. ${htmlText(why.join(' '))}</small></p><div class="poses">${said.join('')}</div><ul class="mind">${list(cautions)}</ul>`
}

const wheelOf = (title: string) => title.replace('Clamp pose, ', '')
const capital = (text: string) => text.replace(/^./, (c) => c.toUpperCase())
