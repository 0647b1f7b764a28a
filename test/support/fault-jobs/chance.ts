import { type SeededRandom, seededRandom } from '../../../src/measure/index.ts'

/**
 * `usual`: as `frequencies.ts` says. `other`: a world that the judge was not told of: every kind as often as any
 * other, sizes flat between their ends, parts that give and bend any way, vehicles and springs that scatter more.
 */
export type World = 'usual' | 'other'

/** Draws of the generator, all from one seed. */
export interface Chance {
  readonly world: World
  readonly between: (low: number, high: number) => number
  readonly normal: (sd: number) => number
  readonly happens: (share: number) => boolean
  readonly sign: () => 1 | -1
  readonly oneOf: <T>(list: readonly T[]) => T
  readonly weighted: <T>(list: readonly T[], weight: (one: T) => number) => T
  /** Log-normal about a median, spread so that `high` is about two standard deviations out; redrawn until inside. */
  readonly sized: (size: { readonly low: number; readonly median: number; readonly high: number }) => number
  /** Mean 0, standard deviation 1, of that shape. */
  readonly shaped: (shape: 'normal' | 'rectangular' | 'triangular' | 'arcsine' | 'student') => number
}

export function chance(seed: number, world: World = 'usual'): Chance {
  const random: SeededRandom = seededRandom(seed >>> 0)
  const between = (low: number, high: number): number => low + (high - low) * random()
  const oneOf = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!
  return {
    world,
    between,
    normal: (sd) => sd * random.normal(),
    happens: (share) => random() < share,
    sign: () => (random() < 0.5 ? 1 : -1),
    oneOf,
    weighted: (list, weight) => {
      let left = random() * list.reduce((sum, one) => sum + weight(one), 0)
      for (const one of list) {
        left -= weight(one)
        if (left < 0) return one
      }
      return list.at(-1)!
    },
    sized: ({ low, median, high }) => {
      if (world === 'other') return between(low, high)
      for (;;) {
        const size = median * Math.exp((Math.log(high / median) / 2) * random.normal())
        if (size >= low && size <= high) return size
      }
    },
    shaped: (shape) => {
      if (shape === 'rectangular') return between(-Math.sqrt(3), Math.sqrt(3))
      if (shape === 'triangular') return Math.sqrt(6) * (random() - random())
      if (shape === 'arcsine') return Math.SQRT2 * Math.sin(2 * Math.PI * random())
      return random.normal()
    },
  }
}
