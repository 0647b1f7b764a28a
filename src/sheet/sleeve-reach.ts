import type { AdjusterSet, CamberCaster, KingpinSleeve, ReachMap } from '../adjust/index.ts'
import { sleeveTilt } from '../linkage/index.ts'
import { covarianceMatrix, type Measured } from '../measure/index.ts'
import { rad } from '../quantity/index.ts'

/** Points round the circle of a sleeve, and round an ellipse of spread. */
const around = 48
/** Two normal values lie together within √(−2 ln 0.05) standard deviations in 95 of 100 cases. @source definition (chi-squared, 2 degrees of freedom) */
const within95 = Math.sqrt(-2 * Math.log(0.05))

/**
 * The (camber, caster) that the offset sleeve of a kingpin reaches: the circle on which it leans the pin, from where the
 * wheel was read.
 *
 * @returns null where there is no sleeve, more than one, or nobody knows how it stands
 * @source own derivation: docs/methods/solid-axle.md
 */
export function sleeveReach({
  set,
  now,
  moves,
  after,
}: {
  readonly set: AdjusterSet
  readonly now: CamberCaster
  readonly moves: readonly { readonly id: string; readonly to: number; readonly label: string }[]
  readonly after?: CamberCaster
}): ReachMap | null {
  const [sleeve, another] = set.adjusters.filter((one): one is KingpinSleeve => one.kind === 'offset sleeve')
  const standing = sleeve && set.settings[sleeve.id]
  if (!sleeve || another || typeof standing !== 'number') return null
  const tilt = (setting: number) => sleeveTilt([{ offset: sleeve.tilt, angle: rad(setting) }])
  const from = tilt(standing)
  const at = (setting: number): readonly [number, number] => {
    const to = tilt(setting)
    return [now.camber.value + to.camber - from.camber, now.caster.value + to.caster - from.caster]
  }
  const [low, high] = sleeve.range
  const outline = Array.from({ length: around }, (_, i) => at(low + ((high - low) * i) / (around - 1)))
  const path: ReachMap['path'][number][] = [
    { at: [now.camber.value, now.caster.value], label: 'now', ellipse: ellipse(now.camber, now.caster) },
  ]
  for (const { id, to, label } of moves)
    if (id === sleeve.id)
      path.push(
        after
          ? {
              at: [after.camber.value, after.caster.value],
              label,
              ellipse: ellipse(after.camber, after.caster),
            }
          : { at: at(to), label, ellipse: null },
      )
  return { outline, path }
}

function ellipse(camber: Measured, caster: Measured): (readonly [number, number])[] {
  const cov = covarianceMatrix([camber, caster])
  const a = Math.sqrt(cov[0]![0]!)
  const b = a > 0 ? cov[0]![1]! / a : 0
  const c = Math.sqrt(Math.max(0, cov[1]![1]! - b * b))
  return Array.from({ length: around }, (_, k) => {
    const turn = (2 * Math.PI * k) / around
    const [x, y] = [within95 * Math.cos(turn), within95 * Math.sin(turn)]
    return [camber.value + a * x, caster.value + b * x + c * y] as const
  })
}
