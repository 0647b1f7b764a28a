import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { byLibrary, byPlatform } from '../../../src/proof/ed25519.ts'
import { fromHex, toHex } from '../../../src/proof/hex.ts'

const root = join(import.meta.dirname, '..', '..', '..')
/** The reference files are other people's data and do not come with the project; typed in are a few of them. */
const whole = join(root, '..', 'shared', 'checks', 'record', 'ed25519-rfc8032.json')
const bytes = (hex: string) => fromHex(hex)!
const ways = [
  ['the platform', byPlatform],
  ['the library', byLibrary],
] as const

/** RFC 8032, 7.1: TEST 1, 2 and 3. */
const vectors = [
  {
    secret: '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60',
    key: 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
    message: '',
    signature:
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
  },
  {
    secret: '4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb',
    key: '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
    message: '72',
    signature:
      '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00',
  },
  {
    secret: 'c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7',
    key: 'fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025',
    message: 'af82',
    signature:
      '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a',
  },
] as const

describe.each(ways)('PR13 by %s', (_, way) => {
  test.each(vectors)('RFC 8032, 7.1: $key', async ({ secret, key, message, signature }) => {
    expect(toHex(await way.publicKey(bytes(secret)))).toBe(key)
    expect(toHex(await way.sign(bytes(secret), bytes(message)))).toBe(signature)
    expect(await way.verify(bytes(key), bytes(signature), bytes(message))).toBe(true)
    const other = bytes(signature)
    other[0]! ^= 1
    expect(await way.verify(bytes(key), other, bytes(message))).toBe(false)
  })

  test.skipIf(!existsSync(whole))('all Wycheproof cases (skipped where they are not there)', async () => {
    const data = JSON.parse(readFileSync(whole, 'utf8')) as {
      wycheproof: readonly { tcId: number; publicKey: string; msg: string; sig: string; result: string }[]
    }
    for (const { tcId, publicKey, msg, sig, result } of data.wycheproof) {
      const [key, signature] = [fromHex(publicKey), fromHex(sig)]
      const is = key && signature ? await way.verify(key, signature, bytes(msg)) : false
      expect(is, `case ${tcId}`).toBe(result === 'valid')
    }
    expect(data.wycheproof.length).toBeGreaterThan(100)
  })
})
