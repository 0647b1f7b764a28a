import type { Part } from './measured.ts'
import { normalCdf, normalDensity } from './normal-cdf.ts'

/** Normals about zero of several widths, with their weights. One of width 0 stands for "no error at all". */
export interface NormalMixture {
  readonly sd: Float64Array
  readonly weight: Float64Array
}

interface Node {
  readonly variance: number
  readonly weight: number
}

const LOST = 16
const STEP = 0.5
const BIN = 0.15

/**
 * Student's t as a normal whose variance is itself uncertain: t = z/√w with νw chi-squared. Several means of
 * repeats and a normal part are then one list of normals.
 *
 * @source own derivation: docs/methods/uncertainty.md
 */
export function mixtureOf(variance: number, students: readonly Part[]): NormalMixture {
  let nodes: Node[] = [{ variance, weight: 1 }]
  for (const student of students) {
    const other = nodesOf(student)
    const all: Node[] = []
    for (const a of nodes)
      for (const b of other) all.push({ variance: a.variance + b.variance, weight: a.weight * b.weight })
    nodes = students.length > 1 ? inBins(all) : all
  }
  return {
    sd: Float64Array.from(nodes, (node) => Math.sqrt(node.variance)),
    weight: Float64Array.from(nodes, (node) => node.weight),
  }
}

/** Trapezoids over v = ln w, whose density is exp(ν(v − eᵛ)/2) but for a factor. */
function nodesOf({ effect, dof }: Part): Node[] {
  const h = STEP * Math.sqrt(2 / dof)
  const raw: { v: number; weight: number }[] = []
  let sum = 0
  const from = -1 - (2 * LOST) / dof
  const to = Math.log(1 + (2 * LOST) / dof) + Math.sqrt((2 * LOST) / dof)
  for (let v = Math.ceil(from / h) * h; v <= to; v += h) {
    const weight = Math.exp((dof / 2) * (v - Math.exp(v) + 1))
    raw.push({ v, weight })
    sum += weight
  }
  return raw.map(({ v, weight }) => ({ variance: effect * effect * Math.exp(-v), weight: weight / sum }))
}

/** Neighbours on a logarithmic scale are put together with their mean variance. */
function inBins(nodes: readonly Node[]): Node[] {
  const bins = new Map<number, Node>()
  for (const node of nodes) {
    const key = Math.round(Math.log(node.variance) / BIN)
    const before = bins.get(key)
    if (before) {
      const weight = before.weight + node.weight
      if (weight > 0)
        bins.set(key, {
          weight,
          variance: (before.variance * before.weight + node.variance * node.weight) / weight,
        })
    } else bins.set(key, node)
  }
  return [...bins.values()]
}

/** Probability below x of the mixture alone. */
export function smoothedBoxNothing({ sd, weight }: NormalMixture, x: number): number {
  let sum = 0
  for (let i = 0; i < sd.length; i++) sum += weight[i]! * step(x, sd[i]!)
  return sum
}

/** Probability below x of the mixture plus a box of half-width a. */
export function smoothedBox({ sd, weight }: NormalMixture, a: number, x: number): number {
  let sum = 0
  for (let i = 0; i < sd.length; i++) sum += weight[i]! * (ramp(x + a, sd[i]!) - ramp(x - a, sd[i]!))
  return Math.min(1, Math.max(0, sum / (2 * a)))
}

const step = (x: number, s: number) => (s > 0 ? normalCdf(x / s) : x > 0 ? 1 : x < 0 ? 0 : 0.5)
/** Running integral of the normal distribution function. */
const ramp = (x: number, s: number) =>
  s > 0 ? x * normalCdf(x / s) + s * normalDensity(x / s) : Math.max(0, x)
