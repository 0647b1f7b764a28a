import type { ExaminedAxle, ExaminedWheel, FindingsProblem } from './findings-problem.ts'

/** A check by hand that nobody has made yet. */
export interface CheckLeft {
  readonly check: string
  readonly wheel: ExaminedWheel
  readonly joint: string | null
  readonly part: string | null
}

const looked = /^(arm|knuckle|strut|spring|axle beam|rod)$/

/** Checks by hand that this vehicle's models offer and that nobody has made yet. @source own choice */
export function checksLeft({ axles, checks }: FindingsProblem): readonly CheckLeft[] {
  const all = axles.flatMap((axle) =>
    (['left', 'right'] as const).flatMap((side) => checksAt(axle, `${axle.end} ${side}`)),
  )
  return all.filter(
    (one) =>
      !checks.some(
        (made) =>
          made.check === one.check &&
          made.wheel === one.wheel &&
          (made.joint === one.joint || made.joint === null) &&
          (made.part === one.part || (made.part === null && one.part === null)),
      ),
  )
}

function checksAt({ corner }: ExaminedAxle, wheel: ExaminedWheel): readonly CheckLeft[] {
  const none = { joint: null, part: null }
  const bushes = Object.entries(corner.joints).filter(
    ([, { bush, at, side }]) => bush && at !== undefined && (side === undefined || wheel.endsWith(side)),
  )
  const parts = Object.entries(corner.parts).filter(([, { kind }]) => looked.test(kind))
  return [
    { check: 'rock at 12 and 6', wheel, ...none },
    { check: 'rock at 3 and 9', wheel, ...none },
    { check: 'spin the bearing', wheel, ...none },
    ...bushes.map(([joint]) => ({ check: 'lever at the bush', wheel, joint, part: null })),
    ...parts.map(([part]) => ({ check: 'looked at', wheel, joint: null, part })),
  ]
}
