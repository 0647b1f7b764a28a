import { commitmentIn, type Entry, type PrivateValue } from '../job/index.ts'
import { erasedBytes, hashOf, privateBytes, privateIn } from '../proof/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { KeptJob } from './log-store.ts'

/** The personal values of a log as they lie beside it. @source definition */
export interface PrivateBeside {
  readonly values: readonly PrivateValue[]
  /** Commitments under which something else lies by now: somebody changed it, or the disk lost it. */
  readonly spoilt: readonly string[]
  /** Commitments of what was erased there. */
  readonly erased: readonly string[]
}

/**
 * The personal values that lie beside a log; what was erased is not among them.
 *
 * @source own derivation: docs/methods/record.md
 */
export async function privateBeside(
  kept: Pick<KeptJob, 'beside' | 'kept'>,
  entries: readonly Entry[],
): Promise<PrivateBeside> {
  const values: PrivateValue[] = []
  const spoilt: string[] = []
  const erased: string[] = []
  const there = new Set(await kept.kept())
  for (const commitment of tokensIn(entries)) {
    if (there.has(hashOf(erasedBytes(commitment)))) {
      erased.push(commitment)
      continue
    }
    try {
      const bytes = await kept.beside(commitment)
      const value = bytes && privateIn(bytes)
      if (value) values.push({ commitment, ...value })
      else if (bytes) spoilt.push(commitment)
    } catch (error) {
      if (!(error instanceof Refusal) || error.code !== 'spoilt') throw error
      spoilt.push(commitment)
    }
  }
  return { values, spoilt, erased }
}

/**
 * Keeps personal values beside a log, but for those that were erased there: an older copy does not bring them back.
 *
 * @returns the commitments that were not there before
 * @source own derivation: docs/methods/record.md
 */
export async function keepPrivate(
  kept: Pick<KeptJob, 'keep' | 'kept'>,
  values: readonly PrivateValue[],
): Promise<readonly string[]> {
  if (values.length === 0) return []
  const there = new Set(await kept.kept())
  const fresh: string[] = []
  for (const { commitment, salt, value } of values) {
    const bytes = privateBytes({ salt, value })
    const isErased = there.has(hashOf(erasedBytes(commitment)))
    if (!bytes || hashOf(bytes) !== commitment || there.has(commitment) || isErased) continue
    await kept.keep(bytes)
    fresh.push(commitment)
  }
  return fresh
}

/**
 * Erases personal values beside a log, and keeps that they were erased. The log stays as it is.
 *
 * @returns how many were there
 * @source own derivation: docs/methods/record.md
 */
export async function erasePrivate(
  kept: Pick<KeptJob, 'keep' | 'forget'>,
  commitments: readonly string[],
): Promise<number> {
  let count = 0
  for (const commitment of new Set(commitments)) {
    await kept.keep(erasedBytes(commitment))
    if (await kept.forget(commitment)) count++
  }
  return count
}

/**
 * Personal values that lie beside a log though no entry of it names them, or they were erased: a program was ended between
 * the two, or an older copy was laid over the folder.
 *
 * @source own derivation: docs/methods/record.md
 */
export async function strayPrivate(
  kept: Pick<KeptJob, 'kept' | 'beside'>,
  entries: readonly Entry[],
): Promise<readonly string[]> {
  const hashes = await kept.kept()
  const named = tokensIn(entries)
  const stray: string[] = []
  for (const hash of hashes) {
    if (named.has(hash) && !hashes.includes(hashOf(erasedBytes(hash)))) continue
    const bytes = await kept.beside(hash).catch(() => null)
    if (bytes && privateIn(bytes)) stray.push(hash)
  }
  return stray
}

/** What an entry names, wherever in it: also in members of a newer version. */
function tokensIn(entries: readonly Entry[]): ReadonlySet<string> {
  const found = new Set<string>()
  const look = (value: unknown): void => {
    if (typeof value === 'string') {
      const commitment = commitmentIn(value)
      if (commitment !== null) found.add(commitment)
    } else if (typeof value === 'object' && value !== null)
      for (const inner of Object.values(value)) look(inner)
  }
  for (const { data } of entries) look(data)
  return found
}
