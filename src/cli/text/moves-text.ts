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
  if (moves.made)
    return [
      heading('Moves, noted as made'),
      paragraph(
        'Adjusters were turned after these readings. Do not turn them a second time: read again. What had been advised:',
        '    ',
      ),
      ...rows,
    ].join('\n')
  return [heading('Moves'), paragraph(moves.sentence, '    '), ...rows].join('\n')
}
