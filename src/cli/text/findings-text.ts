import type { FindingsGroup, FindingsSheet } from '../../sheet/index.ts'
import { heading, paragraph } from './paragraph.ts'

/** Which part explains what was read: findings with their evidence, checks, parts, wear. */
export function findingsText(sheet: FindingsSheet): string {
  const { title, round, rounds } = sheet
  const lines = [
    paragraph(`${title.vehicle}, job ${title.job}`),
    paragraph(
      round === null
        ? 'No angles read yet.'
        : `Judged: ${rounds.find(({ number }) => number === round)?.words}${rounds.length > 1 ? ` (also: ${rounds.flatMap(({ number, words }) => (number === round ? [] : [`${words}, --round ${number}`])).join('; ')})` : ''}.`,
    ),
    '',
    paragraph(sheet.answer),
    ...sheet.groups.flatMap(groupLines),
  ]
  if (sheet.others) lines.push('', paragraph(sheet.others))
  section(lines, 'Two at once', sheet.pairs)
  section(
    lines,
    'Check next, the most telling for its minutes first',
    sheet.checks.map(
      ({ what, where, minutes, hold, tells }) => `[ ] ${what}, ${where} (${minutes} min). ${hold} ${tells}`,
    ),
  )
  section(
    lines,
    'Before ordering',
    sheet.orders.map(({ part, sentence }) => `${capital(part)}. ${sentence}`),
  )
  section(
    lines,
    'Wear: two answers',
    sheet.wear.map(({ joint, play, passes, holds }) => `${capital(joint)}: play ${play}. ${passes} ${holds}`),
  )
  section(lines, 'Explained by nothing', sheet.unexplained)
  section(
    lines,
    'Not read, and would tell more',
    sheet.unread.length > 0 ? [`${capital(sheet.unread.join('; '))}.`] : [],
  )
  section(lines, 'Cautions', sheet.cautions)
  section(lines, 'Could not be used', sheet.troubles)
  return lines.join('\n')
}

function groupLines({ sentence, beliefText, suspects, alike, separate }: FindingsGroup, i: number): string[] {
  const several = suspects.length > 1
  return [
    '',
    heading(`Finding ${i + 1}: belief ${beliefText}`),
    paragraph(sentence, '    '),
    ...suspects.flatMap(({ words, beliefText: own, speaksFor, speaksAgainst, proof }) => [
      ...(several ? [paragraph(`${capital(words)}: ${own}`, '    - ')] : []),
      ...(speaksFor.length > 0 ? [paragraph(`for: ${speaksFor.join(' ')}`, '      ')] : []),
      ...(speaksAgainst.length > 0 ? [paragraph(`against: ${speaksAgainst.join(' ')}`, '      ')] : []),
      ...(proof ? [paragraph(`proof by hand: ${proof}`, '      ')] : []),
    ]),
    ...(alike.length > 0
      ? [paragraph(`Nearly the same would be read with: ${alike.join('; ')}.`, '    ')]
      : []),
    ...(separate
      ? [
          paragraph(
            `Tells them apart: ${lowered(separate.what)}, ${separate.where} (${separate.minutes} min). ${separate.hold}`,
            '    ',
          ),
        ]
      : []),
  ]
}

function section(lines: string[], title: string, sentences: readonly string[]): void {
  if (sentences.length === 0) return
  lines.push('', heading(title), ...sentences.map((one) => paragraph(one, '    ')))
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

const lowered = (words: string) => `${words.charAt(0).toLowerCase()}${words.slice(1)}`
