import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { type Entry, foldJob, readingsCsv, readJob, readReadingsCsv } from '../../../src/job/index.ts'
import { rowsOfCsv } from '../../../src/spec/index.ts'

const jobs = [
  ...['03', '07', '12'].map((unit) => `../../../examples/port-unit-${unit}/port-unit-${unit}.job.json`),
  '../../formats/frozen/format-1-every-kind.job.json',
].map((path) => {
  const read = readJob(JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8')))
  if (!read.ok) throw new Error(path)
  return read.value.entries
})
const readKinds = ['reading', 'ride height', 'play', 'measured']
const sorted = (value: unknown): unknown =>
  Array.isArray(value)
    ? value.map(sorted)
    : value && typeof value === 'object'
      ? Object.fromEntries(
          Object.entries(value)
            .sort(([a], [b]) => (a < b ? -1 : 1))
            .map(([name, one]) => [name, sorted(one)]),
        )
      : value
const withoutRound = (csv: string, separator: string) =>
  csv
    .split('\r\n')
    .map((line, i) => {
      const cells = line.split(separator)
      if (i > 0 && cells.length > 3) cells[3] = ''
      return cells.join(separator)
    })
    .join('\r\n')

describe('JO44 readings go through a table and come back as they were typed', () => {
  for (const [i, entries] of jobs.entries())
    for (const separator of [',', ';'] as const)
      test(`job ${i}, ${separator}`, () => {
        const csv = readingsCsv(entries, { separator })
        const back = readReadingsCsv(withoutRound(csv, separator), 0)
        if (!back.ok) throw new Error(JSON.stringify(back.problems))
        const corrected = new Set(foldJob(entries).corrections.map(({ of }) => of))
        const want = entries.flatMap(({ kind, data, at }, entry) =>
          readKinds.includes(kind) ? [{ entry, said: { kind, data, ...(at ? { at } : {}) } }] : [],
        )
        expect(back.value.entries).toHaveLength(want.length)
        expect(want.length).toBeGreaterThan(3)
        for (const [n, { entry, said }] of want.entries())
          if (!corrected.has(entry)) expect(sorted(back.value.entries[n])).toEqual(sorted(said))
      })

  test('what was corrected reads as it holds now; what was taken back is not there', () => {
    const log: Entry[] = [
      {
        kind: 'ride height',
        data: { wheel: 'front left', when: 'settled', rule: 'rule', readings: ['441 mm'] },
      },
      {
        kind: 'ride height',
        data: { wheel: 'front right', when: 'settled', rule: 'rule', readings: ['430 mm'] },
      },
      { kind: 'correction', data: { of: 0, data: { readings: ['442 mm', '442.5 mm'] } } },
      { kind: 'taken back', data: { of: 1 } },
    ]
    const back = readReadingsCsv(readingsCsv(log, { separator: ',' }), 0)
    expect(back.ok && back.value.entries).toEqual([
      {
        kind: 'ride height',
        data: { wheel: 'front left', when: 'settled', rule: 'rule', readings: ['442 mm', '442.5 mm'] },
      },
    ])
  })

  test('one line each, with what is said of all of them in each', () => {
    const table = rowsOfCsv(readingsCsv(jobs[1]!, { separator: ',' }))
    if (!table.ok) throw new Error()
    const { head, rows } = table.value
    const column = (name: string) => head.indexOf(name)
    const camber = rows.filter(({ cells }) => cells[column('method')] === 'inclinometer')
    expect(camber.length).toBeGreaterThan(6)
    for (const { cells } of camber) {
      expect(cells[column('wheel')]).toMatch(/^(front|rear) (left|right)$/)
      expect(cells[column('reading (°)')]).toMatch(/^-?\d+\.\d+$/)
    }
  })
})

/** What is told of a table of ride heights. */
function told(...lines: string[]): readonly string[] {
  const read = readReadingsCsv(
    ['entry;kind;at;round;place;wheel;when;rule;value (mm)', ...lines].join('\r\n'),
    2,
  )
  return read.ok ? [] : read.problems.map(({ field, wrong }) => `${field}: ${wrong}`)
}

describe('JO45 a table of readings is taken in whole, or every refused cell is named by line and column', () => {
  test('a sound one, typed by hand: what is said of all stands in its first line only', () => {
    const read = readReadingsCsv(
      'entry;kind;place;wheel;when;rule;value (mm)\r\n1;ride height;readings[0];front left;settled;rule;441,5\r\n1;ride height;readings[1];;;;442\r\n',
      0,
    )
    expect(read.ok && read.value.entries).toEqual([
      {
        kind: 'ride height',
        data: { wheel: 'front left', when: 'settled', rule: 'rule', readings: ['441.5 mm', '442 mm'] },
      },
    ])
  })
  for (const [lines, want] of [
    [['1;ride height;;2;readings[0];front left;settled;rule;441'], []],
    [
      ['1;ride height;;1;readings[0];front left;settled;rule;441'],
      ['line 2, column 4 “round”: This line says round 1'],
    ],
    [['1;ride hight;;;readings[0];front left;settled;rule;441'], ['line 2, column 2 “kind”']],
    [['1;note;;;readings[0];front left;settled;rule;441'], ['line 2, column 2 “kind”']],
    [[';ride height;;;readings[0];front left;settled;rule;441'], ['line 2, column 1 “entry”']],
    [['1;ride height;;;readings[0];front lef;settled;rule;441'], ['line 2, column 6 “wheel”']],
    [['1;ride height;;;readings[0];front left;settled;rule;-441'], ['line 2, column 9 “value (mm)”']],
    [['1;ride height;;;readings[0];front left;settled;rule;441 kPa'], ['line 2, column 9 “value (mm)”']],
    [['1;ride height;;;readings[0];front left;settled;;441'], ['line 2']],
    [
      [
        '1;ride height;;;readings[0];front left;settled;rule;441',
        '1;ride height;;;readings[1];front right;settled;rule;442',
      ],
      ['line 3, column 6 “wheel”: This is said twice.'],
    ],
    [
      [
        '1;ride height;;;readings[0];front left;settled;rule;441',
        '1;ride height;;;readings[0];front left;settled;rule;442',
      ],
      ['line 3, column 9'],
    ],
    [
      [
        '1;ride height;2026-03-10;;readings[0];front left;settled;rule;441',
        '1;ride height;2026-03-11;;readings[1];;;;442',
      ],
      ['line 2, column 3 “at”'],
    ],
    [[], ['line 2: There is no reading.']],
  ] as const)
    test(lines.join(' / ') || 'none', () => {
      const got = told(...lines)
      expect(got).toHaveLength(want.length)
      for (const [i, begins] of want.entries()) expect(got[i]).toContain(begins)
    })
  test('columns that must be there', () => {
    const read = readReadingsCsv('kind,at\r\nplay,\r\n', 0)
    expect(read.ok ? [] : read.problems.map(({ wrong }) => wrong)).toEqual([
      'There is no column “entry”.',
      'There is no column “place”.',
    ])
  })
  test('what the files beside the job lack is told at the cell as well', () => {
    const read = readReadingsCsv(
      'entry;kind;place;wheel;when;rule;value (mm)\r\n7;ride height;readings[0];front left;settled;rule;441\r\n8;ride height;readings[0];front right;settled;rule;430\r\n',
      0,
    )
    if (!read.ok) throw new Error()
    const wrong = { field: 'entries[1].data.rule', wrong: 'x', right: 'y' }
    expect(read.value.atCells([wrong])).toEqual([{ ...wrong, field: 'line 3, column 6 “rule”' }])
  })
})
