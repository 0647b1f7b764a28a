import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { canonicalText } from '../../../src/proof/index.ts'

const root = join(import.meta.dirname, '..', '..', '..')
/** The reference files are other people's data and do not come with the project; typed in are a few of them. */
const whole = join(root, '..', 'shared', 'checks', 'record', 'jcs-rfc8785.json')

const double = (hex: string) => Buffer.from(hex, 'hex').readDoubleBE(0)

/** IEEE 754 bits, and how the number is written. RFC 8785, Appendix B. */
const numbers = [
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['41b3de4355555553', '333333333.3333332'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
  ['43143ff3c1cb0959', '1424953923781206.2'],
] as const

describe('PR12 numbers are written as RFC 8785, Appendix B, writes them', () => {
  test.each(numbers)('%s', (hex, want) => {
    expect(canonicalText(double(hex))).toBe(want)
  })
})

test('PR12 members are sorted and texts escaped as RFC 8785, 3.2.2 and 3.2.3, do it', () => {
  // RFC 8785, 3.2.2 (input) and 3.2.3 (output)
  const input =
    '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}'
  const output =
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"\u20ac$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}'
  expect(canonicalText(JSON.parse(input))).toBe(output)
})

test.skipIf(!existsSync(whole))(
  'PR12 all reference cases of RFC 8785 (skipped where they are not there)',
  () => {
    const data = JSON.parse(readFileSync(whole, 'utf8')) as {
      cases: readonly { name: string; input: string; expected_canonical: string }[]
      numbers: readonly { ieee754_hex: string; expected: string }[]
    }
    for (const { name, input, expected_canonical } of data.cases)
      expect(canonicalText(JSON.parse(input)), name).toBe(expected_canonical)
    for (const { ieee754_hex, expected } of data.numbers)
      expect(canonicalText(double(ieee754_hex)), ieee754_hex).toBe(expected)
    expect(data.cases.length + data.numbers.length).toBeGreaterThan(20)
  },
)
