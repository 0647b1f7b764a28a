import { BadInput, type Outcome } from '../files/outcome.ts'
import { topics } from '../sums/topics.ts'
import { paragraph } from '../text/paragraph.ts'
import { wordsOf } from './words.ts'

/** `axlewright sum QUESTION WORDS…`: one question without a job, with formula, source and spread. */
export function sumCommand(question: string, given: readonly string[], options: { json?: boolean }): Outcome {
  const topic = topics.find(({ name }) => name === question)
  if (!topic)
    throw new BadInput([
      `“${question}” is no question. Known are ${topics.map(({ name }) => name).join(', ')}; "axlewright sum --help" shows each.`,
    ])
  const words = wordsOf(given, [...topic.needs, ...topic.may], topic.name)
  const missing = topic.needs.filter((name) => !words.has(name))
  if (missing.length > 0)
    throw new BadInput([`Still missing: ${missing.join(', ')}. For example: axlewright sum ${topic.example}`])
  const sum = topic.work(words)
  if (options.json) return { out: `${JSON.stringify(sum, null, 2)}\n`, code: 0 }
  const lines = [
    ...sum.answer,
    paragraph(sum.formula, '  '),
    paragraph(`source: ${sum.source}`, '  '),
    ...sum.spread.map((line, i) =>
      paragraph(`${i === 0 ? 'spread: ' : ''}${line}`, i === 0 ? '  ' : '          '),
    ),
    ...sum.notes.map((note) => paragraph(note, '  ')),
  ]
  return { out: `${lines.join('\n')}\n`, code: 0 }
}
