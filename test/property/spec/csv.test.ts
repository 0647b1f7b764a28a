import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fieldPath } from '../../../src/corner/index.ts'
import { canonicalText } from '../../../src/proof/index.ts'
import { csvOfRows, readSpec, readSpecCsv, rowsOfCsv, specCsv, writeSpec } from '../../../src/spec/index.ts'
import { placeSteps } from '../../../src/spec/place-steps.ts'
import { law } from '../../support/law.ts'

const separators = [',', ';'] as const
const anyCell = fc.oneof(
  fc.string(),
  fc.constantFrom(
    '',
    '=1+1',
    '+x',
    '-x',
    '@x',
    "'=x",
    "''=x",
    "'x",
    '"',
    '\n',
    '\r\n',
    ';,\t',
    '-1.5',
    ' a ',
  ),
)

law(
  'SP15 any cells come back as they were written',
  fc.record({
    rows: fc.array(fc.array(anyCell, { minLength: 2, maxLength: 2 }), { maxLength: 6 }),
    separator: fc.constantFrom(...separators),
  }),
  ({ rows, separator }) => {
    const back = rowsOfCsv(csvOfRows([['a', 'b'], ...rows], { separator }))
    if (!back.ok) throw new Error(JSON.stringify(back.problems))
    // Lines with nothing in them are what a spreadsheet leaves at the end.
    const want = rows.filter((cells) => cells.some((cell) => cell !== ''))
    const number = (cell: string) =>
      separator === ';' && /^[+-]?\d+\.\d+$/.test(cell) ? cell.replace('.', ',') : cell
    expect(back.value.rows.map(({ cells }) => cells)).toEqual(want.map((cells) => cells.map(number)))
    return back.value.separator === separator
  },
  { runs: 500 },
)

law(
  'SP16 no text that is written begins as a formula does; numbers stay numbers',
  fc.array(anyCell, { minLength: 1, maxLength: 5 }),
  (cells) => {
    for (const cell of cells) {
      const [line] = csvOfRows([[cell]], { separator: ',' }).split('\r\n')
      const begins = line!.replace(/^"/, '')[0]
      if (['=', '+', '-', '@', '\t', '\r'].includes(begins ?? '')) expect(line).toMatch(/^[+-]\d+(\.\d+)?$/)
    }
    return csvOfRows([['-0.25', '+3']], { separator: ',' }) === '-0.25,+3\r\n'
  },
  { runs: 500 },
)

law(
  'SP17 a place is written and taken apart alike',
  fc.array(
    fc.oneof(
      fc.nat({ max: 999 }),
      fc.stringMatching(/^[a-z][a-z0-9_ -]{0,12}$/).filter((name) => name.trim() === name),
      fc.string({ minLength: 1, maxLength: 6 }).filter((name) => !/^[\p{L}\p{N}_ -]+$/u.test(name)),
    ),
    { minLength: 1, maxLength: 5 },
  ),
  (path) => {
    expect(placeSteps(fieldPath(path))).toEqual(path)
    return placeSteps('a..b') === null && placeSteps('.a') === null && placeSteps('a[x]') === null
  },
)

const sheets = ['03', '07', '12'].map((unit) => {
  const file = new URL(`../../../examples/port-unit-${unit}/port-unit-${unit}.spec.json`, import.meta.url)
  const { $schema: _, ...json } = JSON.parse(readFileSync(file, 'utf8'))
  const read = readSpec(json)
  if (!read.ok) throw new Error(unit)
  return { json, spec: read.value }
})

describe('SP17 a spec sheet goes through a table and comes back as it was typed', () => {
  for (const [i, { json, spec }] of sheets.entries())
    for (const separator of separators)
      test(`sheet ${i}, ${separator}`, () => {
        const back = readSpecCsv(specCsv(spec, { separator }))
        if (!back.ok) throw new Error(JSON.stringify(back.problems))
        expect(canonicalText(writeSpec(back.value))).toBe(canonicalText(json))
      })
  test('every procedure, with its lists', () => {
    const { json } = sheets[0]!
    const tightening = {
      front: {
        a: { procedure: 'stages', stages: ['40 N·m', '0.5 kgf·m', '80 N·m'] },
        b: {
          procedure: 'seat and back off',
          seat: '30 N·m',
          back: ['-0°15′', '1/4 turn'].slice(0, 1).concat('30°'),
        },
        c: { procedure: 'hand snug', source: '=typed from "page, 4"\nby hand' },
      },
    }
    const read = readSpec({ ...json, tightening })
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    const back = readSpecCsv(specCsv(read.value, { separator: ';' }))
    if (!back.ok) throw new Error(JSON.stringify(back.problems))
    expect(writeSpec(back.value).tightening).toEqual(tightening)
  })
})

/** What a table says that holds these lines after a sound head of a sheet. */
function told(...lines: string[]): readonly string[] {
  const head = 'place;format;id;name;source;typedBy;typedAt;low;low (°);high (°);value (N·m);procedure'
  const first = ';1;a;A;invented;T;2026-03-02;;;;;'
  const read = readSpecCsv([head, first, ...lines].join('\r\n'))
  return read.ok ? [] : read.problems.map(({ field, wrong }) => `${field}: ${wrong}`)
}

describe('SP18 every cell that is refused is named by line and column, and nothing is taken in then', () => {
  test('a sound one is taken', () => {
    expect(told('limits.front camber;;;;;;;;-0,9;0,1;;')).toEqual([])
  })
  test('a decimal comma with semicolons, a unit in the head or in the cell', () => {
    const read = readSpecCsv(
      'place;format;id;name;source;typedBy;typedAt;low (°);high\r\n;1;a;A;invented;T;2026-03-02;;\r\nlimits.front camber;;;;;;;-0,9;0,1°',
    )
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    expect(writeSpec(read.value).limits).toEqual({ 'front camber': { low: '-0.9°', high: '0,1°' } })
    expect(read.value.limits['front camber']!.high.value).toBeCloseTo((0.1 * Math.PI) / 180, 12)
  })
  for (const [lines, want] of [
    [['limits.front camber;;;;;;;;x;0,1;;'], ['line 3, column 9 “low (°)”']],
    [['limits.front camber;;;;;;;-0,9;;0,1;;'], ['line 3, column 8 “low”']],
    [['limits.front camber;;;;;;;-0,9°;-0,9;0,1;;'], ['line 3, column 9 “low (°)”: “low” is said twice']],
    [
      ['limits.front camber;;;;;;;;1.234;2,0;;'],
      ['line 3, column 9 “low (°)”: “1.234” can be read in two ways'],
    ],
    [['limits.front cambre;;;;;;;;-0,9;0,1;;'], ['line 3']],
    [['limits.front camber;;;;;;;;0,9;0,1;;'], ['line 3']],
    [['limits..x;;;;;;;;0,9;0,1;;'], ['line 3, column 1 “place”']],
    [['limits.front camber;;;;;;;;-0,9;0,1;'], ['line 3: It has 11 cells']],
    [['limits.front camber;;;;;;;;"-0,9;0,1;;'], ['line 3, column 9: A quote is opened']],
    [['limits.front camber;;;;;;;;-0"9;0,1;;'], ['line 3, column 9: There is a quote']],
    [
      [
        'tightening.front.a;;;;;;;;;;;stages',
        'tightening.front.a.stages[0];;;;;;;;;;40;',
        'tightening.front.a.stages[2];;;;;;;;;;80;',
      ],
      ['line 2 and on: The list'],
    ],
    [
      ['limits.front camber;;;;;;;;-0,9;0,1;;', 'limits.front camber;;;;;;;;-0,8;0,2;;'],
      ['line 4, column 9', 'line 4, column 10'],
    ],
    [
      ['limits.front camber;;;;;;;;x;y;;', 'limits.front toe;;;;;;;;x;0,2;;'],
      ['line 3, column 9', 'line 3, column 10', 'line 4, column 9'],
    ],
  ] as const)
    test(lines.join(' / '), () => {
      const got = told(...lines)
      expect(got.length).toBeGreaterThanOrEqual(want.length)
      for (const [i, begins] of want.entries()) expect(got[i]).toContain(begins)
    })
  test('a table without its head', () => {
    for (const [text, begins] of [
      ['', 'line 1'],
      ['a,b\r\n1,2', 'line 1'],
      ['place,a,a\r\n1,2,3', 'line 1, column 3'],
      ['place,,a\r\n1,2,3', 'line 1, column 2'],
    ] as const) {
      const read = readSpecCsv(text)
      expect(read.ok ? '' : read.problems[0]!.field).toBe(begins)
    }
  })
})

law('SP18 whatever the text, a table is read or told', fc.string({ maxLength: 200 }), (text) => {
  const read = readSpecCsv(`place,low\r\n${text}`)
  return read.ok ? false : read.problems.every(({ field, wrong }) => field.length > 0 && wrong.length > 0)
})
