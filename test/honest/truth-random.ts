/** Random numbers of the truth side; another generator than the one in src, on purpose. */
export interface Chance {
  /** Uniform in ± half. */
  readonly within: (half: number) => number
  readonly normal: (sd: number) => number
  readonly angle: () => number
}

export function chance(seed: number): Chance {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  return {
    within: (half) => half * (2 * next() - 1),
    normal: (sd) => sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    angle: () => 2 * Math.PI * next(),
  }
}

/** What a scale of this step shows. */
export const shown = (value: number, step: number): number => Math.round(value / step) * step
