import { codeSvg } from './code-svg.ts'
import { drawable } from './drawable.ts'
import { pairSvg } from './pair-svg.ts'
import type { Paper, PaperSize } from './paper.ts'
import type { PaperBlock, PaperCell } from './paper-block.ts'
import { paperBlocks } from './paper-blocks.ts'
import { demoWords, footWords, paperTitle, signPlaces } from './paper-title.ts'
import { printed } from './printed.ts'
import { stateSvg } from './state-svg.ts'

const ink = '#17212B'
const mm = 72 / 25.4
/** Left, top, right, bottom. */
const margins = [11, 10, 11, 12].map((edge) => edge * mm) as [number, number, number, number]
const widths: Readonly<Record<PaperSize, number>> = { A4: 595.28, Letter: 612 }

const words = (text: string, style: Record<string, unknown> = {}) => ({
  text: drawable(printed(text)),
  ...style,
})
/**
 * The same parts as the page's, as the PDF library takes them.
 *
 * @param created the moment that stands in the file, so that the same paper gives the same bytes
 */
export function paperDefinition({ sheet, seal, version }: Paper, size: PaperSize, created: Date): unknown {
  const room = widths[size] - margins[0] - margins[2]
  const name = `${sheet.title.vehicle}, job ${sheet.title.job}: proof sheet`
  return {
    pageSize: size === 'A4' ? 'A4' : 'LETTER',
    pageMargins: margins,
    info: {
      title: name,
      author: sheet.title.workshop,
      creator: 'Axlewright',
      producer: 'Axlewright',
      creationDate: created,
      modDate: created,
    },
    defaultStyle: { font: 'Roboto', fontSize: 7.4, lineHeight: 1.08, color: ink },
    footer: (page: number, pages: number) => ({
      margin: [margins[0], 2 * mm, margins[2], 0],
      columns: [
        words(footWords(version), { fontSize: 5.6 }),
        words(`${sheet.title.job}, page ${page} of ${pages}`, {
          fontSize: 6.2,
          alignment: 'right',
          width: 30 * mm,
        }),
      ],
    }),
    content: [
      titleBlock(sheet),
      ...(sheet.title.invented ? [boxed([words(demoWords, { bold: true })], room)] : []),
      sealBlock(sheet.sentence, seal),
      ...paperBlocks(sheet).flatMap((block) => laid(block, room)),
      {
        columns: signPlaces.map((place) => ({
          stack: [
            {
              canvas: [
                { type: 'line', x1: 0, y1: 0, x2: room / 3 - 12, y2: 0, lineWidth: 0.8, lineColor: ink },
              ],
            },
            words(place, { fontSize: 6 }),
          ],
        })),
        margin: [0, 9 * mm, 0, 0],
        unbreakable: true,
      },
    ],
  }
}

const framed = {
  hLineWidth: () => 1,
  vLineWidth: (i: number, node: { table: { widths: readonly unknown[] } }) =>
    i === 0 || i === node.table.widths.length ? 1 : 0.5,
  hLineColor: () => ink,
  vLineColor: () => ink,
  paddingLeft: () => 5,
  paddingRight: () => 5,
  paddingTop: () => 2,
  paddingBottom: () => 3,
}
const ruled = {
  hLineWidth: (i: number, node: { table: { headerRows?: number } }) =>
    i === 0 ? 0 : i === node.table.headerRows ? 0.8 : 0.35,
  vLineWidth: () => 0,
  hLineColor: () => ink,
  paddingLeft: () => 0,
  paddingRight: () => 4,
  paddingTop: () => 1.2,
  paddingBottom: () => 1,
}

function titleBlock(sheet: Paper['sheet']): unknown {
  const { title } = sheet
  const field = ([label, text]: readonly [string, string]) => [
    words(label.toUpperCase(), { fontSize: 5.2, characterSpacing: 0.4 }),
    words(text),
  ]
  const [job, days, mileage, ...more] = paperTitle(sheet).map(field)
  return {
    table: {
      widths: ['*', 44, 62, 56, '*'],
      body: [
        [
          [
            words(title.vehicle, { fontSize: 11.5, bold: true }),
            words(title.workshop),
            words('Proof sheet', { bold: true }),
          ],
          job,
          days,
          mileage,
          more.flat(),
        ],
      ],
    },
    layout: framed,
  }
}

function sealBlock(sentence: string, seal: Paper['seal']): unknown {
  const said = [
    words(sentence, { fontSize: 10, bold: true }),
    words(`${seal.head}.`, { fontSize: 10, bold: true, margin: [0, 0, 0, 2] }),
    ...seal.lines.map((text) => words(text)),
    ...(seal.fingerprint === null
      ? []
      : [
          {
            text: [
              words('Fingerprint of the sign-off: '),
              words(seal.fingerprint, { bold: true, fontSize: 9, characterSpacing: 0.5 }),
            ],
            margin: [0, 2, 0, 0],
          },
        ]),
  ]
  const code = seal.code === null ? [] : [{ svg: codeSvg(seal.code), width: 28 * mm }]
  return {
    table: { widths: code.length > 0 ? ['*', 28 * mm] : ['*'], body: [[said, ...code]], dontBreakRows: true },
    layout: {
      ...framed,
      vLineWidth: (i: number, node: Parameters<typeof framed.vLineWidth>[1]) =>
        i === 0 || i === node.table.widths.length ? 1 : 0,
    },
    margin: [0, 5, 0, 0],
  }
}

const boxed = (stack: unknown[], room: number): unknown => ({
  table: { widths: [room - 11], body: [[stack]] },
  layout: framed,
  margin: [0, 4, 0, 0],
})

function laid(block: PaperBlock, room: number): readonly unknown[] {
  const heading = words(block.heading.toUpperCase(), {
    bold: true,
    fontSize: 7.2,
    characterSpacing: 0.5,
    margin: [0, 6, 0, 1.5],
    headlineLevel: 1,
  })
  if (block.kind === 'list') {
    const columns = balanced(block.items, block.columns).map((items) => ({
      stack: items.map((item) => cell(item, ': ', 0)),
    }))
    const body = { columns, columnGap: 5 * mm }
    return [heading, block.isBoxed ? boxed([body], room) : body]
  }
  const share = room - block.widths.length * 4
  const sum = block.widths.reduce((a, b) => a + b, 0)
  const points = block.widths.map((width) => (width / sum) * share)
  // A short table is not torn apart.
  const isShort = block.rows.length <= 6
  return [
    heading,
    {
      unbreakable: isShort,
      table: {
        headerRows: 1,
        dontBreakRows: true,
        keepWithHeaderRows: 1,
        widths: points,
        body: [
          block.head.map((text) => words(text, { fontSize: 6 })),
          ...block.rows.map((row) => row.map((one, i) => cell(one, ' ', points[i]!))),
        ],
      },
      layout: ruled,
    },
    ...(block.note ? [words(block.note, { fontSize: 6, margin: [0, 1, 0, 0] })] : []),
  ]
}

function cell({ state, bold, text, small, pair }: PaperCell, between: string, width: number): unknown {
  if (pair) return { svg: pairSvg(pair), width }
  const said = [
    ...(bold ? [words(bold + (text ? between : ''), { bold: true })] : []),
    ...(text ? [words(text)] : []),
    ...(small ? [words(bold || text ? `\n${small}` : small, { fontSize: 6.2 })] : []),
  ]
  const body = { text: said.length > 0 ? said : '' }
  return state
    ? {
        columns: [
          { svg: stateSvg(state), width: 6.2, margin: [0, 1.4, 0, 0] },
          { ...body, width: '*' },
        ],
        columnGap: 3,
      }
    : body
}

/** Items in their order over columns of about the same length. */
function balanced(items: readonly PaperCell[], columns: number): readonly (readonly PaperCell[])[] {
  const length = ({ bold = '', text = '' }: PaperCell) =>
    Math.ceil((bold.length + text.length + 2) / (150 / columns))
  const all = items.reduce((sum, item) => sum + length(item), 0)
  const out: PaperCell[][] = Array.from({ length: columns }, () => [])
  let done = 0
  for (const item of items) {
    const middle = done + length(item) / 2
    out[Math.min(columns - 1, Math.floor((middle / all) * columns))]!.push(item)
    done += length(item)
  }
  return out
}
