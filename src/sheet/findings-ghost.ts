import type { Corner } from '../corner/index.ts'
import { cornerPoints, isWholeAxle } from '../corner/index.ts'
import type { RankedSuspect } from '../findings/index.ts'
import type { JobState, Round } from '../job/index.ts'
import {
  type Displacement,
  mechanism,
  type Point,
  poseAt,
  type Side,
  sumOfDisplacements,
} from '../linkage/index.ts'
import { metre } from '../quantity/index.ts'
import { sheetCorners } from './corners-of-sheet.ts'
import { figureOf } from './figure.ts'
import { axleGhost, ownShare } from './findings-axle-ghost.ts'
import type { FindingsSuspect } from './findings-sheet.ts'
import type { SheetFigure } from './sheet.ts'
import { axleSetup, cornersSetup, displacementStanding } from './wheel-setups.ts'

/** The largest shift is drawn about so large, so that the eye sees which way it goes, m. @source own choice */
const seen = 0.045
const steps = [1, 2, 5, 10, 20] as const
/** A shift below this goes no way that is worth telling, m. */
const nothing = 0.0002

/** A displaced part on its corner, and which way the part goes in words. */
export interface Ghost {
  readonly drawn: FindingsSuspect['ghost']
  /** " in and back"; empty where nothing of the corner moves one way. */
  readonly moved: string
}

/**
 * What a suspect at its best size does to the wheel it is at: the corner as it stands, with the part displaced (or the
 * wheel so much higher against the body), drawn several times as far as it is.
 *
 * @param side of the corner that is drawn
 * @source own derivation: docs/methods/findings.md
 */
export function ghostOnCorner(
  { suspect, size, ghost }: Pick<RankedSuspect, 'suspect' | 'size' | 'ghost'>,
  corner: Corner | null,
  state: JobState,
  round: Round,
): Ghost {
  const side = suspect.side ?? (ghost.right && !ghost.left ? 'right' : 'left')
  const none: Ghost = { drawn: null, moved: '' }
  if (!corner) return none
  const pair = isWholeAxle(corner.layout)
    ? wholeAxle({ suspect, size }, corner, side, { state, round })
    : hungWheel({ suspect, size, ghost }, corner, side, { state, round })
  if (!pair) return none
  const [sound, moved] = pair
  const radius = sound.wheel.radius
  const most = Math.max(
    radius * Math.hypot(...difference(sound.wheel.spinAxis, moved.wheel.spinAxis)),
    Math.hypot(...difference(sound.wheel.centre, moved.wheel.centre)),
    ...sound.strokes.flatMap(({ from, to }, i) => [
      Math.hypot(...difference(from, moved.strokes[i]!.from)),
      Math.hypot(...difference(to, moved.strokes[i]!.to)),
    ]),
  )
  if (most < nothing) return none
  const times = steps.findLast((k) => k * most <= seen) ?? 1
  return {
    drawn: { axle: corner.axle, side, figure: stretched(sound, moved, times), times },
    moved: wayOf(suspect, sound, moved),
  }
}

type Standing = { readonly state: JobState; readonly round: Round }
type Pair = readonly [SheetFigure, SheetFigure] | null

function wholeAxle(
  one: Pick<RankedSuspect, 'suspect' | 'size'>,
  corner: Corner,
  side: Side,
  { state, round }: Standing,
): Pair {
  const half = sheetCorners(corner, axleSetup(corner, state, round)).find((drawn) => drawn.side === side)
  const sound = half && (half.present ?? half.ride)
  const moved = sound && axleGhost(one, corner, side, sound)
  return sound && moved ? [sound, moved] : null
}

function hungWheel(
  { suspect, size, ghost }: Pick<RankedSuspect, 'suspect' | 'size' | 'ghost'>,
  corner: Corner,
  side: Side,
  { state, round }: Standing,
): Pair {
  const spring =
    suspect.kind === 'sagged spring' ? ownShare : suspect.kind === 'bush clamped hanging' ? -ownShare : 0
  const displacement = ghost[side]
  if (!displacement && spring === 0) return null
  const wheel = cornersSetup(corner, state, round)[side]
  const points = cornerPoints(corner)
  const stands = displacementStanding(wheel)
  const figure = (more: Displacement, higher: number): SheetFigure => {
    const all = sumOfDisplacements([stands, more])
    const travel = metre(wheel.drive.travel + higher)
    const pose = poseAt(mechanism(points, all), { travel, rack: metre(0) })
    const bodyAt: Record<string, Point> = {}
    for (const [name, by] of Object.entries(all.body ?? {})) {
      const at = (points as unknown as Record<string, Point | undefined>)[name]
      if (at) bodyAt[name] = [at[0] + by[0], at[1] + by[1], at[2] + by[2]]
    }
    return figureOf({ points, pose, side, joints: [], tyreWidth: corner.wheel.width, bodyAt })
  }
  return [figure({}, 0), figure(displacement ?? {}, spring * size.value)]
}

const difference = (a: Point, b: Point): Point => [b[0] - a[0], b[1] - a[1], b[2] - a[2]]

function stretched(sound: SheetFigure, moved: SheetFigure, k: number): SheetFigure {
  const far = (a: Point, b: Point): Point => [
    a[0] + k * (b[0] - a[0]),
    a[1] + k * (b[1] - a[1]),
    a[2] + k * (b[2] - a[2]),
  ]
  const axis = far(sound.wheel.spinAxis, moved.wheel.spinAxis)
  const length = Math.hypot(...axis)
  return {
    ...moved,
    strokes: sound.strokes.map((stroke, i) => ({
      ...stroke,
      from: far(stroke.from, moved.strokes[i]!.from),
      to: far(stroke.to, moved.strokes[i]!.to),
    })),
    wheel: {
      ...moved.wheel,
      centre: far(sound.wheel.centre, moved.wheel.centre),
      spinAxis: [axis[0] / length, axis[1] / length, axis[2] / length],
    },
  }
}

/** Of the outer end of an arm: which way it went. */
function wayOf({ kind, side }: RankedSuspect['suspect'], sound: SheetFigure, moved: SheetFigure): string {
  if (kind !== 'bent lower arm' && kind !== 'bent upper arm') return ''
  const part = kind.replace('bent ', '')
  const i = sound.strokes.findIndex((stroke) => stroke.part === part)
  if (i < 0) return ''
  const [x, y] = difference(sound.strokes[i]!.to, moved.strokes[i]!.to)
  const outward = side === 'right' ? -y : y
  const size = Math.hypot(x, outward)
  const ways = [
    ...(Math.abs(outward) > 0.4 * size ? [outward > 0 ? 'out' : 'in'] : []),
    ...(Math.abs(x) > 0.4 * size ? [x > 0 ? 'forward' : 'back'] : []),
  ]
  return size < nothing ? '' : ` ${ways.join(' and ')}`
}
