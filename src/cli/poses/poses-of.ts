import { Refusal } from '../../quantity/index.ts'
import { answerBad } from './answer-bad.ts'
import { answerCase } from './answer-case.ts'
import { isPlain } from './read-geometry.ts'
import { hasOurFault } from './row-refusal.ts'

/** What the exchange gives back. */
interface PosesAnswer {
  readonly output: Readonly<Record<string, unknown>>
  /** Every row has an answer or a refusal. */
  readonly ok: boolean
}

/** Told after each case or row: how many of how many are answered. */
export type Progress = (done: number, total: number) => void

/**
 * Answers a file of the pose exchange: the same structure with every answer computed anew. A row that cannot be
 * answered says why; only a file that is no such file at all is refused as a whole.
 *
 * @param content the file's text, or what its JSON holds
 * @param progress told as the work goes on
 * @throws {Refusal} `no-pose-file`
 * @source definition: docs/methods/pose-of-a-corner.md
 */
export function posesOf(content: unknown, progress: Progress = () => {}): PosesAnswer {
  const file = typeof content === 'string' ? parsed(content) : content
  if (!isPlain(file) || (!Array.isArray(file['cases']) && !Array.isArray(file['bad'])))
    throw notAFile('It holds neither a list "cases" nor a list "bad".')
  const { cases, bad, ...head } = file
  const total = [cases, bad].reduce<number>((sum, list) => sum + (Array.isArray(list) ? list.length : 0), 0)
  let done = 0
  const told =
    <T>(answer: (row: T) => unknown) =>
    (row: T) => {
      const answered = answer(row)
      progress(++done, total)
      return answered
    }
  const output = {
    ...head,
    ...(Array.isArray(cases) ? { cases: cases.map(told(answerCase)) } : {}),
    ...(Array.isArray(bad) ? { bad: bad.map(told(answerBad)) } : {}),
  }
  return { output, ok: !hasOurFault(output) }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    throw notAFile(error instanceof Error ? `It is not JSON: ${error.message}.` : 'It is not JSON.')
  }
}

const notAFile = (why: string): Refusal<'no-pose-file'> =>
  new Refusal({
    code: 'no-pose-file',
    at: 'file',
    sentence: `This is not a file of pose cases. ${why}`,
    remedy: 'Give a JSON file with a list of cases.',
  })
