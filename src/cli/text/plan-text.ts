import type { PlanSheet } from '../../sheet/index.ts'
import { heading, paragraph } from './paragraph.ts'

type Line = PlanSheet['bands'][number]['lines'][number]

const width = 100
const indent = ' '.repeat(9)

/**
 * The plan for a terminal: what to have before the first band, then a band for each way the vehicle stands, a line for
 * each action with its box, and what follows from the work.
 *
 * @param why whether each line says why it is there and what it waits for
 */
export function planText(sheet: PlanSheet, { why = false } = {}): string {
  const { title, goal, bands } = sheet
  let number = 0
  const numbers = new Map(bands.flatMap(({ lines }) => lines.map(({ id }) => [id, ++number] as const)))
  return [
    `${title.vehicle} · job ${title.job} · ${title.workshop}`,
    paragraph(`Plan: ${goal.join(', ')}`, '', width),
    ...(sheet.done ? [paragraph(`${sheet.done}.`, '', width)] : []),
    paragraph(sheet.time ? `${sheet.size}; ${sheet.time}.` : `${sheet.size}.`, '', width),
    ...(title.source ? [paragraph(`Values: ${title.source}`, '', width)] : []),
    ...(sheet.proof ? [paragraph(sheet.proof, '', width)] : []),
    ...judged(sheet),
    ...sheet.troubles.map((trouble) => paragraph(`? ${trouble}`, '', width)),
    ...section('Before anything is undone', [
      ...sheet.shopping.flatMap(({ heading: kind, items }) => items.map((item) => `□ ${kind}: ${item}`)),
      ...sheet.missing.map((missing) => `□ ${missing}`),
    ]),
    ...section(
      'What failed',
      sheet.branches.map(({ words, because }) => `${capital(because)}. ${words}`),
    ),
    heading('Cautions'),
    ...sheet.cautions.map((caution) => paragraph(`! ${caution}`, '', width)),
    ...bands.map(({ station, lines }, at) =>
      [
        heading(`${at + 1}  ${capital(station)}`),
        ...lines.map((line) => lineText(line, { numbers, why })),
      ].join('\n'),
    ),
    ...section(
      'What follows from it',
      sheet.consequences.map(({ words, because }) => `□ ${words} (${because})`),
    ),
    ...section('Another way', sheet.alternatives),
    '',
  ].join('\n')
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

const section = (name: string, items: readonly string[]): readonly string[] =>
  items.length === 0 ? [] : [heading(name), ...items.map((item) => hung(item))]

/** Later lines stand under the words, not under the box. */
function hung(text: string, hang = '  '): string {
  return paragraph(text, hang, width).slice(hang.length)
}

/** Of an order made by hand, which has no proof; of our own only what must never be. */
function judged({ proof, against, brokenLines }: PlanSheet): readonly string[] {
  if (proof !== '' && brokenLines === 0) return []
  const rules =
    brokenLines === 0
      ? 'No rule is broken.'
      : `${brokenLines} ${brokenLines === 1 ? 'line breaks a rule' : 'lines break a rule'}: marked with ✕ below.`
  return [paragraph([rules, against && `${capital(against)}.`].filter(Boolean).join(' '), '', width)]
}

function lineText(
  line: Line,
  { numbers, why }: { readonly numbers: ReadonlyMap<string, number>; readonly why: boolean },
): string {
  const mark = line.broken.length > 0 ? '✕' : '□'
  const head = `${String(numbers.get(line.id)).padStart(3)} ${mark} ${(line.letter ?? '').padEnd(2)} `
  const facts = [line.tool, line.value, line.place, line.minutes].filter(Boolean)
  const whole = [line.words, ...facts].join(' · ')
  const fits = head.length + whole.length <= width
  return [
    ...(fits ? [head + whole] : [head + hung(line.words, indent).trimStart(), dotted(facts)]),
    ...line.broken.map(({ rule, sentence, instead }) =>
      paragraph(`✕ ${rule === 'not yet' ? '' : `${rule}: `}${sentence} ${instead}`, indent, width),
    ),
    ...line.cautions.map((caution) => paragraph(`! ${caution}`, indent, width)),
    ...(line.records.length > 0 ? [paragraph(`Write down: ${line.records.join('; ')}`, indent, width)] : []),
    ...(why ? whyText(line, numbers) : []),
  ].join('\n')
}

/** Broken between facts, not within one. */
function dotted(facts: readonly string[]): string {
  const lines: string[] = []
  for (const fact of facts) {
    const last = lines.at(-1)
    if (last !== undefined && indent.length + last.length + 3 + fact.length <= width)
      lines[lines.length - 1] = `${last} · ${fact}`
    else lines.push(fact)
  }
  return lines.map((line) => indent + line).join('\n')
}

function whyText(line: Line, numbers: ReadonlyMap<string, number>): readonly string[] {
  const named = (id: string, words: string) => `${numbers.get(id) ?? 'left out'}, ${words}`
  return [
    paragraph(`Why: ${line.why}.`, indent, width),
    ...line.waitsFor.map(({ id, words, why }) =>
      paragraph(`After ${named(id, words)}: ${why}.`, indent, width),
    ),
  ]
}
