import type { ProofBolt, ProofLine, ProofMark, ProofPair, ProofRound, ProofSheet } from '../../sheet/index.ts'
import type { PaperBlock, PaperCell } from './paper-block.ts'

/** The parts of a printed proof in their order: what is open, before and after, bolt book, and what else was done. */
export function paperBlocks(sheet: ProofSheet): readonly PaperBlock[] {
  const { angles, heights, bolts, before, after, threshold } = sheet
  const table = (
    heading: string,
    pairs: readonly ProofPair[],
    was: string,
    is: string,
  ): readonly PaperBlock[] =>
    pairs.length === 0
      ? []
      : [
          {
            kind: 'table',
            heading,
            head: ['', was, is, 'Between its limits: hollow before, full after'],
            widths: [25, 19, 22, 34],
            rows: pairs.map((pair) => [{ bold: pair.label }, mark(pair.before), mark(pair.after), { pair }]),
          },
        ]
  return [
    ...(sheet.open.length > 0
      ? [
          list(
            'Open still',
            sheet.open.map((text) => ({ state: 'open', text }) as const),
            2,
            true,
          ),
        ]
      : []),
    ...table('Wheel angles', angles, roundWords('Before', before), roundWords('After', after)).map(
      (block) => ({
        ...block,
        note: `Values with their 95 % intervals. “Inside” means: probable by at least ${Math.round(threshold * 100)} %, the gauges’ own errors counted.`,
      }),
    ),
    ...table('Ride heights', heights, 'Before lifting', 'Settled, after'),
    ...lines('Play', sheet.wear, 2),
    ...boltBlocks(bolts, sheet.untouched),
    ...told(sheet),
    list(
      'Cautions',
      sheet.cautions.map((text) => ({ text })),
      3,
    ),
    list(
      'Who, and whose values',
      [
        ...sheet.hands.map(({ hand, did }) => ({ bold: hand, text: did })),
        ...sheet.signOffs.map((text) => ({ text })),
        ...sheet.sources.map((text) => ({ text })),
      ],
      2,
    ),
  ]
}

const list = (
  heading: string,
  items: readonly PaperCell[],
  columns: 1 | 2 | 3,
  isBoxed = false,
): PaperBlock => ({ kind: 'list', heading, items, columns, ...(isBoxed ? { isBoxed } : {}) })

const lines = (heading: string, all: readonly ProofLine[], columns: 1 | 2): readonly PaperBlock[] =>
  all.length === 0
    ? []
    : [
        list(
          heading,
          all.map(({ what, words, open }) => ({
            ...(open ? { state: 'open' as const } : {}),
            bold: what,
            text: words,
          })),
          columns,
        ),
      ]

/** What the log tells in words; what it tells nothing of is named, so that nobody takes it for left out. */
function told(sheet: ProofSheet): readonly PaperBlock[] {
  const parts = [
    ['As found', sheet.marks, 2],
    ['Parts renewed', sheet.parts, 2],
    ['Declined, or not answered', sheet.declined, 1],
    ['Deviations', sheet.deviations, 1],
    ['Electronics', sheet.electronics, 2],
    ['Road tests', sheet.roadTests, 1],
    ['Decisions', sheet.decisions, 2],
    ['To be done after handover', sheet.followUps, 2],
  ] as const
  const empty = parts.flatMap(([heading, all]) => (all.length === 0 ? [heading.toLowerCase()] : []))
  return [
    ...parts.flatMap(([heading, all, columns]) => lines(heading, all, columns)),
    ...(empty.length > 0 ? [list('Nothing recorded of', [{ text: `${empty.join(' · ')}.` }], 1)] : []),
  ]
}

const roundWords = (when: string, round: ProofRound | null): string =>
  round ? `${when}: ${round.purpose}, ${round.day ?? 'no day'}` : `${when}: not read`

function mark(one: ProofMark | null): PaperCell {
  if (!one) return { text: 'not read' }
  const { text, spread, verdict, probability } = one
  return {
    state: verdict,
    bold: `${text} ${spread}`,
    small: probability === null ? verdict : `${verdict}, ${chance(probability)}`,
  }
}

/** "97 %"; never a certainty that nobody has. */
const chance = (probability: number): string =>
  probability > 0.99 ? 'over 99 %' : probability < 0.01 ? 'under 1 %' : `${Math.round(probability * 100)} %`

function boltBlocks(bolts: readonly ProofBolt[], untouched: number): readonly PaperBlock[] {
  const note = `Not opened in this job: ${untouched} ${untouched === 1 ? 'joint' : 'joints'}. ± is what the wrench and its scale leave unsure.`
  if (bolts.length === 0)
    return [list('Bolt book', [{ text: `No joint was opened, as far as the log says. ${note}` }], 1)]
  return [
    {
      kind: 'table',
      heading: 'Bolt book',
      head: ['Joint', 'Asked for', 'Recorded', 'Wrench', 'By hand', 'Second look'],
      widths: [20, 21, 16, 20, 11, 12],
      rows: bolts.map((bolt) => [
        {
          state: bolt.done ? 'done' : 'open',
          bold: bolt.letter ? `${bolt.letter} ${bolt.name}` : upper(bolt.name),
          small: `${bolt.wheel}: ${bolt.state}`,
        },
        { text: bolt.required },
        bolt.value === ''
          ? { text: 'not final' }
          : { bold: bolt.value, small: [bolt.how, bolt.pin].filter(Boolean).join(', ') },
        { text: bolt.wrench || 'none recorded' },
        { text: bolt.hand },
        {
          text: bolt.secondLook || 'none recorded',
          small: bolt.due.length > 0 ? 'again after a distance' : '',
        },
      ]),
      note,
    },
  ]
}

const upper = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`
