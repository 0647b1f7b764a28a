/** One place where an entry names another. */
export interface Reference {
  /** Path in the entry's data. */
  readonly path: string
  readonly of: unknown
}

/**
 * The earlier entries that an entry names, by kind.
 *
 * @source definition
 */
export function references(kind: string, data: Readonly<Record<string, unknown>>): readonly Reference[] {
  switch (kind) {
    case 'correction':
    case 'cleared':
    case 'taken back':
      return [{ path: 'of', of: data.of }]
    case 'photo':
      return data.beside === undefined ? [] : [{ path: 'beside', of: data.beside }]
    case 'decision':
      return Array.isArray(data.of) ? data.of.map((of, i) => ({ path: `of[${i}]`, of })) : []
    default:
      return []
  }
}
