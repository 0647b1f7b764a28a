import type { ExaminedWheel } from '../../../src/findings/index.ts'
import { sourceName } from '../../../src/gauge/index.ts'
import {
  arcsine,
  combine,
  type Measured,
  normal,
  rectangular,
  resolution,
  type Term,
} from '../../../src/measure/index.ts'
import type { Chance } from './chance.ts'
import { shares } from './frequencies.ts'

const degree = Math.PI / 180
const mm = 0.001
const track = 1.5
const wheelbase = 2.65

/** What a workshop measures with. Half-widths unless said; rad and m. */
export interface Kit {
  readonly level: {
    readonly step: number
    readonly placing: number
    readonly zero: number
    readonly scale: number
  }
  readonly runOut: number
  readonly pads: number
  /** Standard uncertainty of one sweep's caster and SAI; null without plates. */
  readonly sweep: { readonly caster: number; readonly sai: number; readonly zero: number } | null
  /** Null where nobody could read toe. */
  readonly strings: { readonly reading: number; readonly askew: number; readonly held: number } | null
  readonly rule: { readonly step: number; readonly placing: number; readonly zero: number }
}

/** A kit of good, usual or rough quality. */
export function kitOf(luck: Chance): Kit {
  const quality = luck.oneOf([0.5, 1, 1, 1.8]) * luck.between(0.8, 1.25)
  const q = (x: number): number => x * quality
  return {
    level: {
      step: 0.05 * degree,
      placing: q(0.08 * degree),
      zero: q(0.06 * degree),
      scale: q(0.04 * degree),
    },
    runOut: q(0.06 * degree),
    pads: q(1.5 * mm),
    sweep: luck.happens(shares.noSteerGauge)
      ? null
      : { caster: q(0.18 * degree), sai: q(0.22 * degree), zero: q(0.5 * degree) },
    strings: luck.happens(shares.noStrings)
      ? null
      : { reading: q(0.04 * degree), askew: q(0.04 * degree), held: q(0.06 * degree) },
    rule: { step: 1 * mm, placing: q(1 * mm), zero: q(0.7 * mm) },
  }
}

const sum = (value: number, ...of: readonly (Measured | Term)[]): Measured =>
  combine(
    of.map((one) => ('of' in one ? one : { of: one, times: 1 })),
    value,
  )
const pad = (kit: Kit, wheel: ExaminedWheel): Measured =>
  rectangular(kit.pads, sourceName('floor', `not mapped, ${wheel}`))

/** Roll of the floor under an axle that the kit does not know of; left high positive. */
function roll(kit: Kit, end: 'front' | 'rear', times: number): Term[] {
  return [
    { of: pad(kit, `${end} left`), times: times / track },
    { of: pad(kit, `${end} right`), times: -times / track },
  ]
}

/** One angle with every error that the kit gives it, none of them drawn yet. Null when the kit cannot read it. */
export function angleBudget(
  kit: Kit,
  {
    wheel,
    angle,
    sai,
  }: {
    readonly wheel: ExaminedWheel
    readonly angle: 'camber' | 'caster' | 'sai' | 'toe'
    readonly sai: number
  },
): Measured | null {
  const [end, side] = wheel.split(' ') as ['front' | 'rear', 'left' | 'right']
  const out = side === 'left' ? 1 : -1
  if (angle === 'camber') {
    const { level } = kit
    return sum(
      0,
      rectangular(level.placing, sourceName('reading', `${wheel} camber, c1, 1`)),
      resolution(level.step, sourceName('step', `${wheel} camber, c1, 1`)),
      rectangular(level.zero, sourceName('zero', 'camber gauge')),
      rectangular(level.scale, sourceName('scale', 'camber gauge')),
      arcsine(kit.runOut, sourceName('run-out', `${wheel}, camber`)),
      ...roll(kit, end, -out),
    )
  }
  if (angle === 'toe') {
    if (!kit.strings) return null
    const { reading, askew, held } = kit.strings
    return sum(
      0,
      normal(reading, sourceName('reading', `${wheel} toe, t1`)),
      { of: rectangular(askew, sourceName('strings', 'strings, askew')), times: out },
      ...(end === 'front'
        ? [{ of: normal(held, sourceName('assumed', 'steering wheel held straight')), times: out }]
        : []),
    )
  }
  if (!kit.sweep || end !== 'front') return null
  if (angle === 'sai')
    return sum(
      0,
      normal(kit.sweep.sai, sourceName('reading', `${wheel} sai, s1`)),
      ...roll(kit, 'front', out),
    )
  const each = 1 / (2 * wheelbase)
  return sum(
    0,
    normal(kit.sweep.caster, sourceName('reading', `${wheel} caster, s1`)),
    { of: rectangular(kit.sweep.zero, sourceName('steer zero', 'steer gauge')), times: out * Math.tan(sai) },
    { of: pad(kit, 'front left'), times: each },
    { of: pad(kit, 'front right'), times: each },
    { of: pad(kit, 'rear left'), times: -each },
    { of: pad(kit, 'rear right'), times: -each },
  )
}

export function heightBudget({ rule }: Kit, wheel: ExaminedWheel): Measured {
  return sum(
    0,
    rectangular(rule.placing, sourceName('reading', `${wheel} height, h1, 1`)),
    resolution(rule.step, sourceName('step', `${wheel} height, h1, 1`)),
    rectangular(rule.zero, sourceName('zero', 'rule')),
  )
}

export const turnBudget = (side: 'left' | 'right', luck: Chance): Measured =>
  normal(luck.between(0.25, 0.6) * degree, sourceName('reading', `turn to the ${side}`))
export const setBackBudget = (luck: Chance): Measured =>
  normal(luck.between(1.5, 4) * mm, sourceName('strings', 'strings, set-back'))

/** Readings with their errors drawn: every source once, however many readings it is in. */
export function readWith(luck: Chance): (truth: number, budget: Measured) => Measured {
  const drawn = new Map<string, number>()
  return (truth, budget) => {
    let value = truth
    for (const { source, effect, shape } of budget.parts) {
      if (!drawn.has(source)) drawn.set(source, luck.shaped(shape))
      value += effect * drawn.get(source)!
    }
    return { value, parts: budget.parts }
  }
}
