/**
 * A personal value as it lies beside a log, from where it can be erased.
 *
 * @source own derivation: docs/methods/record.md
 */
export interface PrivateValue {
  /** What the token in the log says: 64 hexadecimal digits. */
  readonly commitment: string
  /** 32 random bytes, hexadecimal: without them, trying all likely values would find the one that was erased. */
  readonly salt: string
  readonly value: string
}
