import type { BoltSheet, SheetBolt } from '../../sheet/index.ts'
import { heading, paragraph } from './paragraph.ts'

/** The bolt book for a terminal: open joints with what is asked for, what holds them and what to do now; then the others. */
export function boltsText({ bolts, sentence, cautions, troubles }: BoltSheet): string {
  const open = bolts.filter((bolt) => !bolt.done)
  const done = bolts.filter((bolt) => bolt.done && bolt.state !== 'closed')
  const untouched = bolts.filter((bolt) => bolt.done && bolt.state === 'closed')
  return [
    heading(`Open joints: ${open.length}`).trimStart(),
    ...open.map(openText),
    heading(`Done: ${done.length}`),
    ...done.map((bolt) =>
      [
        `■ ${called(bolt)}: ${bolt.state}${bolt.recorded.length > 0 ? ` (${bolt.recorded.at(-1)})` : ''}`,
        ...bolt.toDo.map(({ sentence: said, remedy }) => paragraph(`${said} ${remedy}`, '    ')),
      ].join('\n'),
    ),
    heading(`Not opened in this job: ${untouched.length}`),
    paragraph(untouched.map(called).join('; ') || 'none', '  '),
    '',
    paragraph(sentence),
    ...troubles.map((trouble) => paragraph(`? ${trouble}`)),
    ...cautions.map((caution) => paragraph(`! ${caution}`)),
    '',
  ].join('\n')
}

const called = ({ wheel, letter, name }: SheetBolt): string =>
  `${wheel}, ${letter ? `${letter} ` : ''}${name}`

function openText(bolt: SheetBolt): string {
  const { doing } = bolt
  const figures = doing.figures.map(
    ({ label, value, unit, atFastener }) =>
      `${label} ${value}${unit === '°' ? '' : ' '}${unit}${atFastener ? ` (${atFastener})` : ''}`,
  )
  const now = doing.says.map((said) => said.replaceAll('**', '')).join(' ')
  return [
    `□ ${called(bolt)}: ${bolt.state}`,
    paragraph(bolt.required, '    '),
    ...bolt.toDo.map(({ sentence, remedy }) => paragraph(`${sentence} ${remedy}`, '    ')),
    ...doing.blocked.map((why) => paragraph(`Not yet: ${why}`, '    ')),
    ...(now ? [paragraph(`Now: ${now}`, '    ')] : []),
    ...(figures.length > 0 ? [paragraph(figures.join('; '), '    ')] : []),
    paragraph(`Stand: ${doing.stand}`, '    '),
    ...doing.cautions.map((caution) => paragraph(`! ${caution}`, '    ')),
  ].join('\n')
}
