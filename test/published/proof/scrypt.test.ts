import { scryptSync } from 'node:crypto'
import { expect, test } from 'vitest'
import { codeHash } from '../../../src/proof/code-hash.ts'

const hex = (text: string) => Buffer.from(text, 'utf8').toString('hex')

test('PR25 scrypt as RFC 7914, 12 prints it (first 32 of its 64 bytes)', () => {
  // Source: RFC 7914, section 12, second and third vector; from memory, and agreed by the platform's own scrypt below.
  expect(codeHash('password', hex('NaCl'), { n: 1024 as never, r: 8, p: 16 })).toBe(
    'fdbabe1c9d3472007856e7190d01e9fe7c6ad7cbc8237830e77376634b373162',
  )
  expect(codeHash('pleaseletmein', hex('SodiumChloride'), { n: 16384, r: 8, p: 1 })).toBe(
    '7023bdcb3afd7348461c06cd81fd38ebfda8fbba904f8e3ea9b543f6545da1f2',
  )
})

test('PR25 a code’s hash is the one of the platform’s own scrypt', () => {
  const salt = '000102030405060708090a0b0c0d0e0f'
  const options = { N: 16384, r: 8, p: 2, maxmem: 1 << 28 }
  const want = scryptSync('4711', Buffer.from(salt, 'hex'), 32, options).toString('hex')
  expect(codeHash('4711', salt, { n: 16384, r: 8, p: 2 })).toBe(want)
  expect(codeHash('4711', 'no salt')).toBe(null)
})
