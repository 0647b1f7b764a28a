import { describe, expect, test } from 'vitest'
import { csvOfRows, rowsOfCsv } from '../../../src/spec/index.ts'

/** Head and rows of a file without a fault. */
const cells = (text: string) => {
  const table = rowsOfCsv(text)
  if (!table.ok) throw new Error(JSON.stringify(table.problems))
  return [table.value.head, ...table.value.rows.map((row) => row.cells)]
}
const crlf = '\r\n'

describe('SP15 the examples of RFC 4180, section 2, are read as it says', () => {
  const abc = ['aaa', 'bbb', 'ccc']
  const zyx = ['zzz', 'yyy', 'xxx']
  for (const [rule, text, want] of [
    ['1, each record on a line', `aaa,bbb,ccc${crlf}zzz,yyy,xxx${crlf}`, [abc, zyx]],
    ['2, no break at the end', `aaa,bbb,ccc${crlf}zzz,yyy,xxx`, [abc, zyx]],
    [
      '3, a header line',
      `field_name,other,third${crlf}aaa,bbb,ccc${crlf}zzz,yyy,xxx${crlf}`,
      [['field_name', 'other', 'third'], abc, zyx],
    ],
    ['4, fields in a record', 'aaa,bbb,ccc', [abc]],
    ['5, quotes around or not', `"aaa","bbb","ccc"${crlf}zzz,yyy,xxx`, [abc, zyx]],
    [
      '6, a line break in quotes',
      `"aaa","b${crlf}bb","ccc"${crlf}zzz,yyy,xxx`,
      [['aaa', `b${crlf}bb`, 'ccc'], zyx],
    ],
    ['7, a quote in quotes', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ] as const)
    test(rule, () => expect(cells(text)).toEqual(want))
})

test('SP15 what is written is written as RFC 4180, section 2, says', () => {
  expect(
    csvOfRows(
      [
        ['aaa', `b${crlf}bb`, 'b"bb', 'a,b'],
        ['zzz', '', '1', 'a;b'],
      ],
      { separator: ',' },
    ),
  ).toBe(`aaa,"b${crlf}bb","b""bb","a,b"${crlf}zzz,,1,a;b${crlf}`)
})
