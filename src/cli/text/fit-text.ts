import type { FitMove, FitSheet, FittedWheel } from '../../sheet/index.ts'
import { heading, paragraph } from './paragraph.ts'

/** What was learned of the geometry, wheel by wheel. */
export function fitText({ wheels, troubles }: FitSheet): string {
  const lines = wheels.map(wheelText)
  if (troubles.length > 0)
    lines.push(heading('Could not be read'), ...troubles.map((each) => paragraph(each, '    ')))
  return lines.join('\n')
}

function wheelText({ wheel, corner, measured, points, open, grossError, moves }: FittedWheel): string {
  const lines = [heading(`${capital(wheel)}: ${corner}, fitted`)]
  if (measured.length === 0)
    lines.push(
      paragraph(
        'Nothing was measured on this wheel yet: what follows is what is typical of the layout. Write “measured” entries into the job.',
        '    ',
      ),
    )
  else {
    const wide = Math.max(...measured.map(({ says }) => says.length))
    for (const { says, entry, read, fitted, used } of measured) {
      const from = entry === null ? '' : `  (entry ${entry})`
      const left = used ? '' : '  left out'
      lines.push(`    ${says.padEnd(wide)}  ${read.text} ${read.spread}   fitted ${fitted}${left}${from}`)
    }
  }
  if (grossError) lines.push('', paragraph(grossError, '    '))
  lines.push('', '    Points: forward, outward, up, 95 % to either side (before: what was known of it)')
  const name = Math.max(...points.map((point) => point.name.length))
  for (const point of points) {
    const three = point.at.map((at, k) => `${at} ${point.spread[k]}`).join('   ')
    lines.push(`    ${point.name.padEnd(name)}  ${three}   (before ${point.before.join(', ')})`)
  }
  if (measured.length > 0 && open.length > 0) {
    lines.push('', '    Still open')
    lines.push(...open.map((each) => paragraph(each, '      ')))
  }
  if (moves.length > 0) lines.push('', '    What moves do here', ...moves.map(moveText))
  return lines.join('\n')
}

function moveText({ adjuster, angle, by, change, next }: FitMove): string {
  const first = `    ${adjuster}, ${by}: ${angle} ${change.text} ${change.spread}`
  if (next.length === 0) return first
  const wants = next.map(({ says, minutes, after }) => `${says} (${minutes} min, then ${after})`)
  return `${first}\n${paragraph(`surer with: ${wants.join('; ')}`, '      ')}`
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
