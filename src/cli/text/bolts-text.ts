import type { BoltLine } from '../../job/index.ts'
import { heading, paragraph } from './paragraph.ts'

/** The bolt book for a terminal: open joints with what holds them, then what is done, then what was never opened. */
export function boltsText(book: readonly BoltLine[]): string {
  const open = book.filter((line) => !line.done)
  const done = book.filter((line) => line.done && line.state !== 'closed')
  const untouched = book.filter((line) => line.done && line.state === 'closed')
  const called = (line: BoltLine) => `${line.wheel}, ${line.letter ? `${line.letter} ` : ''}${line.name}`
  return [
    heading(`Open joints: ${open.length}`).trimStart(),
    ...open.map((line) =>
      [
        `□ ${called(line)}: ${line.state}`,
        ...line.toDo.map(({ sentence, remedy }) => paragraph(`${sentence} ${remedy}`, '    ')),
      ].join('\n'),
    ),
    heading(`Done: ${done.length}`),
    ...done.map((line) => `■ ${called(line)}: ${line.state}`),
    heading(`Not opened in this job: ${untouched.length}`),
    paragraph(untouched.map(called).join('; ') || 'none', '  '),
    '',
    paragraph(
      'Torques and positions are those that the workshop typed from its own service information; that information stands above this book.',
    ),
    '',
  ].join('\n')
}
