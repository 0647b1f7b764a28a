// One vehicle with gauges on it, on the floor of bay 2.
import { cornerPoints, isWholeAxle, wholeAxlePoints } from '../../src/corner/index.ts'
import { floorMapOf, readKit } from '../../src/kit/index.ts'
import {
  axlePoseAt,
  mechanism,
  mirrorPoint,
  poseAt,
  solidAxle,
  sumOfDisplacements,
} from '../../src/linkage/index.ts'
import { file, must } from './files.mjs'
import { DEGREE, MM, seeded, text } from './truth.mjs'
import { aboutPin, carried, cross, frame, unit } from './turning.mjs'

const kit = must(readKit(file('port-kit.kit.json')))
const floor = floorMapOf(kit, 'bay-2')

/** One vehicle with gauges on it. `truth` gives each front wheel's displacement, the rear's angles, the tracks. */
export function vehicle({ corner, seed, size, rear }) {
  const random = seeded(seed)
  const whole = isWholeAxle(corner.layout)
  const points = whole ? wholeAxlePoints(corner) : cornerPoints(corner)
  const design = corner.rideHeight.at
  /** Rectangular error of half-width `half`. */
  const error = (half) => (2 * random() - 1) * half
  const angle = (value, half = 0.05) => text((value + error(half * DEGREE)) / DEGREE, 0.05, '°')
  const length = (value, half = 0.25, step = 0.5) => text((value + error(half * MM)) / MM, step, ' mm')

  /** Roll of an axle on its pads: + leans to the left. */
  const roll = (end) =>
    Math.atan((floor.heights[`${end} right`] - floor.heights[`${end} left`]) / (size[`${end}Track`] * MM))
  const leaned = (end, side, camber) => camber + (side === 'left' ? roll(end) : -roll(end))
  /** Pitch of the vehicle on its pads: + nose down. A steered wheel's spin axis has a part along x that it tilts. */
  const mean = (end) => (floor.heights[`${end} left`] + floor.heights[`${end} right`]) / 2
  const noseDown = Math.atan((mean('rear') - mean('front')) / (size.wheelbase * MM))
  const pitched = ({ camber, spinAxis }) => camber + noseDown * spinAxis[0]

  const travel = (state, side) => design - state.height[side] * MM
  const machine = (state, side) => mechanism(points, sumOfDisplacements(state[side]))
  /** Pose of one front wheel as a left one; `steer` is the rack (m), or the drop arm's turn (rad). */
  const poseOf = whole ? axleWheel : cornerWheel
  function cornerWheel(state, side, steer = 0) {
    return poseAt(machine(state, side), { travel: travel(state, side), rack: steer })
  }
  function axleWheel(state, side, steer = 0) {
    const [left, right] = [travel(state, 'left'), travel(state, 'right')]
    const across = points.left.wheelCentre[1] - points.right.wheelCentre[1]
    const drive = { heave: (left + right) / 2, roll: Math.asin((left - right) / across), drop: steer }
    const wheel = axlePoseAt(solidAxle(points, state.settings), drive)[side]
    const drawnLeft = side === 'left' ? (p) => p : mirrorPoint
    return { ...wheel, spinAxis: drawnLeft(wheel.spinAxis), wheelCentre: drawnLeft(wheel.wheelCentre) }
  }

  const camberEntry = (state, end, side) => {
    const camber = end === 'front' ? pitched(poseOf(state, side)) : rear[side].camber * DEGREE
    // The rim is clamped a little askew: a tilt that turns with the wheel.
    const askew = (0.08 + 0.1 * random()) * DEGREE
    const phase = 2 * Math.PI * random()
    return {
      method: 'inclinometer',
      wheel: `${end} ${side}`,
      gauge: 'inclinometer',
      readings: [0, 180].map((turn) => ({
        wheelTurn: `${turn}°`,
        reading: angle(leaned(end, side, camber) + askew * Math.sin(phase + turn * DEGREE)),
      })),
    }
  }

  const stringsEntry = (state) => {
    const span = 402
    const yaw = error(0.15 * DEGREE)
    const shift = error(6 * MM)
    const out = 0.14
    const wheels = {}
    const hubs = {}
    for (const end of ['front', 'rear'])
      for (const side of ['left', 'right']) {
        const sign = side === 'left' ? 1 : -1
        const half = (size[`${end}Track`] / 2) * MM
        const pose = end === 'front' ? poseOf(state, side) : null
        const toe = pose ? pose.toe : rear[side].toe * DEGREE
        const [dx, y] = pose ? [pose.wheelCentre[0], pose.wheelCentre[1]] : [0, half]
        const x = (end === 'front' ? 0 : -size.wheelbase * MM) + dx
        const string = (at) => size.frontTrack * 0.5 * MM + out + sign * (shift + yaw * at)
        // The measuring points stand on the rim's edge, a little inboard of the hub's face.
        const edge = (ahead) =>
          string(x + ahead * (span / 2) * MM * Math.cos(toe)) -
          (y + 0.03 - ahead * (span / 2) * MM * Math.sin(toe))
        wheels[`${end} ${side}`] = {
          front: [length(edge(1)), length(edge(1))],
          rear: [length(edge(-1)), length(edge(-1))],
          span: `${span} mm`,
        }
        hubs[`${end} ${side}`] = length(string(x) - (y + 0.05))
      }
    return {
      method: 'strings and rule',
      rule: 'rule',
      strings: 'strings',
      wheels,
      hubs,
      wheelbase: `${size.wheelbase} mm`,
    }
  }

  /** Rack, or turn of the drop arm, at which a front wheel stands `steer` to the left of straight ahead. */
  const rackFor = (state, side, steer) => {
    const straight = poseOf(state, side).toe
    const toLeft = (rack) => (side === 'left' ? -1 : 1) * (poseOf(state, side, rack).toe - straight)
    const [low, high] = whole ? [-0.33, 0.33] : [-0.055, 0.055]
    const rising = toLeft(high) > toLeft(low)
    let [a, b] = [low, high]
    for (let i = 0; i < 60; i++) {
      const middle = (a + b) / 2
      if (toLeft(middle) < steer === rising) a = middle
      else b = middle
    }
    return (a + b) / 2
  }

  const sweepEntry = (state, side, withTilt) => {
    const zero = error(0.15 * DEGREE)
    // Only a gauge along the wheel sees how the wheel tilts.
    const home = withTilt ? poseOf(state, side) : null
    const forward = home && unit(cross(home.spinAxis, [0, 0, 1]))
    const place = (aim) => {
      const steer = (aim + error(0.4)) * DEGREE
      const pose = poseOf(state, side, rackFor(state, side, steer))
      const ahead = home && (whole ? aboutPin(home, pose, side) : carried(frame(home), frame(pose)))(forward)
      return {
        steer: text((steer + zero + error(0.15 * DEGREE)) / DEGREE, 0.5, '°'),
        camber: angle(leaned('front', side, pitched(pose))),
        ...(withTilt ? { tilt: angle(Math.asin(ahead[2] - noseDown * ahead[0])) } : {}),
      }
    }
    return {
      method: 'steer sweep',
      side,
      gauge: 'inclinometer',
      steerGauge: 'turn-plates',
      sweeps: [0, 1, 2].map(() => ({ left: place(20), right: place(-20) })),
    }
  }

  const heightEntry = (wheel, when, height) => ({
    wheel,
    when,
    rule: 'rule',
    readings: [`${height} mm`],
  })
  const truth = (state) =>
    ['left', 'right'].map((side) => {
      const { camber, caster, toe, sai } = poseOf(state, side)
      return `${side}: ${Object.entries({ camber, caster, toe, sai })
        .map(([name, value]) => `${name} ${(value / DEGREE).toFixed(2)}°`)
        .join(', ')}`
    })
  return { points, camberEntry, stringsEntry, sweepEntry, heightEntry, truth, random }
}
