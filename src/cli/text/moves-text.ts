import type { Sheet } from '../../sheet/index.ts'
import { heading, paragraph } from './paragraph.ts'

/** The moves as what the hand does, in order. */
export function movesText({ moves }: Sheet): string {
  const rows = moves.moves.map((move) => {
    const lines = [`${String(move.order).padStart(2)}  ${move.wheel}, ${move.name}: ${move.amount}`]
    lines.push(`      ${[move.how, move.seenFrom].filter(Boolean).join(', ')}`)
    if (move.warning) lines.push(paragraph(`Mind: ${move.warning}`, '      '))
    return lines.join('\n')
  })
  return [heading('Moves'), paragraph(moves.sentence, '    '), ...rows].join('\n')
}
