import { describe, expect, test } from 'vitest'

/** One value from outside the project. */
export interface PublishedRow {
  readonly id: string
  readonly got: number | (() => number)
  readonly want: number
  /** Half the source's last printed digit, or derived in a comment. */
  readonly within: number
  /** Document and clause. */
  readonly source: string
  /** `published` unless it is a number worked out here from a published relation, or remembered. */
  readonly basis?: 'published' | 'derived' | 'from memory'
}

/** Checks rows against their source. Each row counts once in the tally that the test command prints. */
export function published(name: string, rows: readonly PublishedRow[]): void {
  describe(name, () => {
    test('has rows', () => expect(rows.length).toBeGreaterThan(0))
    for (const row of rows)
      test(`${row.id} [${row.basis ?? 'published'}]`, () => {
        const got = typeof row.got === 'function' ? row.got() : row.got
        expect(row.source.length, 'a source').toBeGreaterThan(3)
        expect(row.within, 'a tolerance').toBeGreaterThan(0)
        expect(
          Math.abs(got - row.want),
          `${row.id}: got ${got}, ${row.source} says ${row.want}`,
        ).toBeLessThanOrEqual(row.within)
      })
  })
}
