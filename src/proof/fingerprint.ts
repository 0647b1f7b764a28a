import { hashOf } from './hash-of.ts'

/**
 * A key as people compare it by eye: the first 80 bits of the hash of the key, in groups of five.
 *
 * @param key 64 small hexadecimal digits
 * @source own choice: 80 bits cannot be met by trying within reach; docs/methods/record.md
 * @example fingerprint('00'.repeat(32)).length // 23
 */
export const fingerprint = (key: string): string =>
  hashOf(`axlewright/key/1\0${key}`)
    .slice(0, 20)
    .replace(/(.{5})(?=.)/g, '$1 ')
