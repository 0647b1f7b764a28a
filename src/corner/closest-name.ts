/**
 * The known name that a mistyped one most likely means: at most two letters wrong, missing, added or
 * changed over, and no more than a third of the name.
 *
 * @returns the name, or null when none is close
 * @source optimal string alignment distance; common practice, no source
 * @example closestName('lower-outr', ['lower-outer', 'upper-outer']) // 'lower-outer'
 */
export function closestName(name: string, known: readonly string[]): string | null {
  let best: string | null = null
  let least = Math.min(2, Math.floor(name.length / 3)) + 1
  for (const candidate of known) {
    const away = distance(name.toLowerCase(), candidate.toLowerCase(), least)
    if (away < least) {
      best = candidate
      least = away
    }
  }
  return best
}

function distance(a: string, b: string, enough: number): number {
  if (Math.abs(a.length - b.length) >= enough) return enough
  let two: number[] = []
  let one = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let least = Math.min(one[j]! + 1, row[j - 1]! + 1, one[j - 1]! + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, two[j - 2]! + 1)
      row.push(least)
    }
    two = one
    one = row
  }
  return one[b.length]!
}
