import type { LearnedAnswer, LearnedModel, LearnedMove, LearnedSheet } from '../../sheet/index.ts'
import { heading, paragraph } from './paragraph.ts'

/** What jobs taught: model by model, the moves it comes from, and first-move success. */
export function learnedText({ jobs, models, split, doubted, moves, success, silent }: LearnedSheet): string {
  const lines = models.map(modelText)
  if (jobs === 0)
    lines.push(
      paragraph(
        'Nothing can be learned from these jobs: no adjuster with a known place was turned between two readings of its wheel.',
      ),
    )
  if (split)
    lines.push(
      '',
      paragraph(
        `Where answers differ from what points say, this is, as far as these jobs tell: ${split}.`,
        '    ',
      ),
    )
  if (doubted.length > 0)
    lines.push(
      '',
      paragraph(
        `Hardly believed, since all other jobs say something else: ${doubted.join('; ')}. Look whether the wheel, the direction or the mark was noted wrongly.`,
        '    ',
      ),
    )
  if (moves.length > 0) lines.push(heading('Moves it comes from'), ...movesLines(moves))
  lines.push(heading('First moves that ended inside'), ...successLines(success))
  if (silent.length > 0)
    lines.push(
      '',
      paragraph(
        `Without a move that teaches (none between two readings, across a new part, or from a place that nobody noted): ${silent.join('; ')}.`,
        '    ',
      ),
    )
  return lines.join('\n')
}

function modelText({ name, model, layout, jobs, levels }: LearnedModel): string {
  const lines = [heading(`${name} (${layout}, drawing ${model}): ${count(jobs)}`)]
  lines.push('    Times as much as its points say, 95 % (without any job)')
  for (const { of, jobs: own, answers } of levels) {
    lines.push(`    ${of}, from ${count(own)}`)
    const learned = answers.filter(isLearned)
    const wide = Math.max(0, ...learned.map(({ adjuster, angle }) => adjuster.length + angle.length))
    for (const { adjuster, angle, text, before } of learned)
      lines.push(
        `      ${`${adjuster}, ${angle}`.padEnd(wide + 2)}  ${text}   (1.00 ± ${(1.96 * before).toFixed(2)})`,
      )
  }
  const rest = levels[0]!.answers.filter((_, i) => !levels.some(({ answers }) => isLearned(answers[i]!)))
  if (rest.length > 0)
    lines.push(
      paragraph(
        `As their points say, since nobody turned and read them: ${rest.map(({ adjuster, angle }) => `${adjuster} (${angle})`).join(', ')}.`,
        '    ',
      ),
    )
  return lines.join('\n')
}

/** Something moved it, or made it surer. */
const isLearned = ({ factor, spread, before }: LearnedAnswer): boolean =>
  Math.abs(factor - 1) > untouched || Math.abs(spread / before - 1) > untouched

/** Rounding of the sums. */
const untouched = 1e-9

function movesLines(moves: readonly LearnedMove[]): readonly string[] {
  const wide = Math.max(...moves.map(({ turned, angle }) => turned.length + angle.length))
  return moves.map(
    ({ job, turned, angle, foreseen, seen }) =>
      `    ${`${turned}: ${angle}`.padEnd(wide + 2)}  ${seen}, by the points ${foreseen}   (${job})`,
  )
}

function successLines({ all, quarters, byPast, notCounted }: LearnedSheet['success']): readonly string[] {
  const left =
    notCounted.length > 0
      ? [paragraph(`Not counted, since not everything was read again: ${notCounted.join('; ')}.`, '    ')]
      : []
  if (!all)
    return [
      paragraph('No job here turned something on what was read, and read it all again.', '    '),
      ...left,
    ]
  const lines = [...quarters, ...byPast, all].map(({ of, inside, jobs, share, low, high }) => {
    const percent = (x: number) => Math.round(100 * x)
    return `    ${of.padEnd(24)}  ${inside} of ${count(jobs)}: ${percent(share)} % (95 %: ${percent(low)} to ${percent(high)} %)`
  })
  return [...lines, ...left]
}

const count = (jobs: number) => (jobs === 1 ? '1 job' : `${jobs} jobs`)
