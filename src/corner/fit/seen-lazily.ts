/** A value of an observable and its slope by each unknown. @source definition */
export interface Seen {
  readonly value: number
  readonly slopes: Float64Array
}

/** A value whose slopes are worked out when first asked for: they cost twenty times as much. */
export function seenLazily(value: number, slopes: () => Float64Array): Seen {
  let known: Float64Array | undefined
  return {
    value,
    get slopes() {
      known ??= slopes()
      return known
    },
  }
}
