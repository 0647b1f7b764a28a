import type { BoltSheet, Sheet, SheetReading } from '../../sheet/index.ts'
import { clampText } from './clamp-text.ts'
import { ascii, dimensionLine, drawn } from './dimension-line.ts'
import { movesText } from './moves-text.ts'
import { heading, paragraph } from './paragraph.ts'

/** A shape for each verdict, so that none rests on colour or on one word alone. */
export const marks: Readonly<Record<SheetReading['verdict'], string>> = {
  inside: '■',
  'inside, not proven': '◧',
  'outside, not proven': '▨',
  outside: '✕',
  'no limit': '·',
}

const asciiMarks: typeof marks = {
  inside: '#',
  'inside, not proven': '~',
  'outside, not proven': '?',
  outside: 'X',
  'no limit': '.',
}

/** The whole sheet for a terminal. */
export function sheetText(sheet: Sheet, book: BoltSheet, { plain = false } = {}): string {
  const ink = plain ? ascii : drawn
  const mark = plain ? asciiMarks : marks
  const readings = sheet.readings.map((r) => {
    const limits = r.limit ? `${r.limit.lowText} … ${r.limit.highText}` : 'no limit on the sheet'
    const after = r.predicted ? `after the moves ${r.predicted.text} ${r.predicted.spread}` : ''
    const first = `${mark[r.verdict]} ${`${r.label}, ${r.of}`.padEnd(30)} ${`${r.text} ${r.spread}`.padEnd(20)} ${r.verdict}`
    const second = `  ${dimensionLine(r, ink).padEnd(32)}  ${limits}${after ? `   ${after}` : ''}`
    const height = r.atSheetHeight
      ? `\n    at the sheet's height it would be ${r.atSheetHeight.text} ${r.atSheetHeight.spread}`
      : ''
    return `${first}\n${second}${height}`
  })
  const heights = sheet.heights.map(
    (h) =>
      `${mark[h.verdict]} ${h.wheel.padEnd(30)} ${`${h.number.text} ${h.number.spread}`.padEnd(20)} ${h.limitText}`,
  )
  return [
    `${sheet.title.vehicle} · job ${sheet.title.job} · ${sheet.title.workshop}`,
    [sheet.title.round, sheet.title.method].filter(Boolean).join(' · '),
    `Values: ${sheet.title.source}`,
    ...sheet.troubles.map((t) => paragraph(`? ${t}`)),
    ...(heights.length > 0 ? [heading('Ride heights'), ...heights] : []),
    heading('Readings'),
    ...readings,
    '',
    ...sheet.advice.map((line) => paragraph(line)),
    movesText(sheet),
    clampText(sheet),
    ...wearText(sheet, mark),
    ...openText(book),
    heading('Cautions'),
    ...sheet.cautions.map((line) => paragraph(`! ${line}`)),
    heading('Next'),
    paragraph(sheet.next.sentence),
    '',
  ].join('\n')
}

/** Play that was found, against whose limit. */
function wearText({ wear }: Sheet, mark: typeof marks): readonly string[] {
  if (wear.length === 0) return []
  return [
    heading('Wear'),
    ...wear.flatMap((w) => {
      const [limit] = w.limits
      const whose =
        limit && [limit.whose === 'not said' ? '' : limit.whose, limit.jurisdiction].filter(Boolean)
      return [
        `${mark[w.verdict]} ${`${w.name}, ${w.wheel}`.padEnd(30)} ${`${w.play.text} ${w.play.spread}`.padEnd(20)} ${limit ? `limit ${limit.text} (${whose!.join(', ')})` : 'no limit'}`,
        paragraph(w.sentence, '    '),
      ]
    }),
  ]
}

/** Open joints by name; the bolt book has the rest. */
function openText({ bolts, sentence }: BoltSheet): readonly string[] {
  const open = bolts.filter(({ done }) => !done)
  return [
    heading('Bolt book'),
    paragraph(sentence),
    ...open.map(
      ({ wheel, letter, name, state, required }) =>
        `□ ${wheel}, ${[letter, name].filter(Boolean).join(' ')}: ${state}; ${required}`,
    ),
  ]
}
