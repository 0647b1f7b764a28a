import { describe, expect, test } from 'vitest'
import { withUnit } from '../../src/web/state/with-unit.ts'

describe('a bare number', () => {
  test.each([
    ['-0.9', '-1.00°', '-0.9°'],
    ['−0,9', '−1,00°', '−0,9°'],
    ['  +2 ', '1.5 °', '+2 °'],
    ['108', '108.5 mm', '108 mm'],
    ['-15', "-12'", "-15'"],
    ['3', '4 in', '3 in'],
  ])('WE18 "%s" where "%s" stood becomes "%s"', (text, before, whole) => {
    expect(withUnit(text, before)).toBe(whole)
  })

  test.each([
    ['', '1°'],
    ['-', '1°'],
    ['0°15', "0°10'"],
    ['12', "0°10'"],
    ['12', '3/32 in'],
    ['12', '7'],
    ['12', ''],
    ['1.2.3', '1°'],
    ['12 mm', '1°'],
    ['1e3', '1°'],
  ])('WE18 "%s" where "%s" stood stays as it was typed', (text, before) => {
    expect(withUnit(text, before)).toBe(text)
  })
})
