import { type Mechanism, newtonPose, type Pose, poseAt, ratesAt } from '../linkage/index.ts'
import { metre } from '../quantity/index.ts'

const inner = (20 * Math.PI) / 180
const TRIES = 12
const CLOSE = 1e-9

/**
 * The rack position, as the left-drawn corner sees it, at which a wheel has turned 20° towards its own side (to
 * toe-out) since straight ahead.
 *
 * @returns m; null where the steering does not get there
 * @source definition of toe-out on turns: common practice, no source
 */
export function rackForTurn(m: Mechanism, straight: Pose): number | null {
  let rack = 0
  let pose = straight
  try {
    for (let turn = 0; turn < TRIES; turn++) {
      const miss = straight.toe - inner - pose.toe
      if (Math.abs(miss) < CLOSE) return rack
      const slope = ratesAt(m, pose)({ rack: 1 }).toe
      if (slope === 0) return null
      // no further at once than a tenth of a radian
      rack += Math.max(-0.15, Math.min(0.15, miss)) / slope
      const drive = { travel: straight.travel, rack: metre(rack) }
      pose = turn === 0 ? poseAt(m, drive) : newtonPose(m, drive, pose)
    }
    return null
  } catch {
    return null
  }
}
