import type { ExaminedWheel, FindingsProblem, Suspect, SuspectKind } from '../../../src/findings/index.ts'
import type { ReadingName } from '../../../src/linkage/index.ts'
import { type Chance, chance, type World } from './chance.ts'
import type { Fault } from './fault.ts'
import { faultsOf } from './faults-of.ts'
import { conditions, frequencies, scatter, shares, sheet } from './frequencies.ts'
import { endOf, layoutsOf, madeAxle } from './made-axle.ts'
import { readJob } from './read-job.ts'
import { setAnywhere, setInside, type Target } from './set-inside.ts'
import { type AxleState, asDrawn, sides, type TrueAxle, wheelsInBody } from './true-axle.ts'
import { type TrueVehicle, travels, wheels } from './true-vehicle.ts'
import { halfRange, inRange, type Knob, knobsOf, middleOf, settingOf, withSettings } from './turn-knobs.ts'

/** A simulated job: what is asked, and what is true. */
export interface FaultJob {
  readonly seed: number
  readonly problem: FindingsProblem
  readonly truth: Suspect | 'healthy'
  /** SI; 0 of a healthy vehicle. */
  readonly size: number
  /** Of the fault's effect from a healthy vehicle, in standard deviations; 0 without a fault. */
  readonly distance: number
  /** The starting layout of the axle that is at fault, else of the front one. */
  readonly layout: string
  /** A second fault of the same vehicle, and how far it is from a healthy one by itself. */
  readonly also: { readonly suspect: Suspect; readonly distance: number } | null
  readonly history: keyof typeof shares.history
  readonly vehicle: TrueVehicle
}

/** What to draw; the rest is drawn by the published frequencies. */
export interface FaultJobOptions {
  /** A starting layout that the vehicle must have. */
  readonly layout?: string
  readonly fault?: SuspectKind | 'healthy'
  readonly world?: World
  /** Two faults at once; hands, eyes and dial found nothing out. */
  readonly two?: boolean
}

type Targets = Readonly<Partial<Record<ReadingName, Target>>>

/** Draws a vehicle, what is wrong with it, how it was set and how it was read. One seed, one job. */
export function faultJob(seed: number, options: FaultJobOptions = {}): FaultJob {
  for (let attempt = 0; ; attempt++) {
    try {
      const job = drawn(seed, chance((seed * 7919 + attempt * 104729 + 17) >>> 0, options.world), options)
      if (job) return job
    } catch (error) {
      // a vehicle that cannot stand so: drawn anew
      if (!(error instanceof Error) || error.name !== 'Refusal' || attempt > 200) throw error
    }
    if (attempt > 400) throw new Error(`no vehicle for ${JSON.stringify(options)}`)
  }
}

function drawn(seed: number, luck: Chance, { layout, fault, two = false }: FaultJobOptions): FaultJob | null {
  const ids = idsOf(luck, layout)
  const made = ids.map((id) => madeAxle(id, luck))
  const axles = made.map(({ axle }) => axle)
  const targets: Targets = Object.assign({}, ...axles.map((axle) => targetsOf(axle, luck)))
  const springs = springsOf(luck)
  const blank: TrueVehicle = {
    axles,
    states: made.map(({ axle, state }) => {
      const knobs = knobsOf(axle)
      return withSettings(state, knobs, knobs.map(startOf))
    }),
    springs,
    misread: {
      camber: 0,
      steer: 0,
      pads: { 'front left': 0, 'front right': 0, 'rear left': 0, 'rear right': 0 },
    },
  }
  const drawnCondition = luck.weighted(
    Object.keys(conditions) as (keyof typeof conditions)[],
    (c) => conditions[c],
  )
  const condition =
    fault === undefined
      ? drawnCondition
      : fault === 'healthy'
        ? 'healthy'
        : fault === 'out of adjustment'
          ? 'misadjusted'
          : 'faulty'
  const first = condition === 'faulty' ? pickFault(blank, luck, fault) : null
  const second = two && first ? secondFault(blank, luck, first) : null
  if (two && !second) return null
  const picked = first && second ? second.both : first
  if (condition === 'faulty' && !picked) return null
  const size = picked ? luck.sized(frequencies[picked.suspect.kind as keyof typeof frequencies].size) : 0
  const story = historyOf(condition, picked, luck)
  const { healthy, faulty } = lived(blank, { picked, size, targets, story, luck })
  const vehicle = condition === 'misadjusted' ? misadjusted(healthy, luck) : faulty
  return readJob({
    seed,
    luck,
    vehicle,
    healthy: condition === 'misadjusted' ? vehicle : healthy,
    targets,
    picked,
    second,
    size,
    story,
    condition,
    ids,
  })
}

function idsOf(luck: Chance, layout: string | undefined): readonly string[] {
  const end = layout === undefined ? null : endOf(layout)
  const front = end === 'front' ? layout! : luck.oneOf(layoutsOf('front'))
  const rear = end === 'rear' ? layout! : luck.oneOf(layoutsOf('rear'))
  return luck.happens(shares.rearExamined) || end === 'rear' ? [front, rear] : [front]
}

/** The sheet's figures are those of the model as drawn. */
function targetsOf(axle: TrueAxle, luck: Chance): Targets {
  const knobs = knobsOf(axle)
  // a sleeve leans the pin wherever it stands: the figures are those of the pin without it, midway of two opposite places
  const at = (sleeve: number) => {
    const settings = knobs.map((knob) => (knob.adjuster.kind === 'offset sleeve' ? sleeve : middleOf(knob)))
    return wheelsInBody(axle, withSettings(asDrawn(), knobs, settings), {
      travel: { left: 0, right: 0 },
      steer: 0,
    })
  }
  const places = [at(0), at(Math.PI)]
  const meanOf = (angle: 'camber' | 'caster' | 'sai' | 'toe'): number | null =>
    places[0]!.left[angle] === null
      ? null
      : places.reduce((sum, both) => sum + ((both.left[angle] ?? 0) + (both.right[angle] ?? 0)) / 4, 0)
  const targets: Partial<Record<ReadingName, Target>> = {}
  for (const angle of ['camber', 'caster', 'sai', 'toe'] as const) {
    const within = sheet[angle].within * luck.between(0.6, 1.2)
    const middle = meanOf(angle)
    if (middle === null || (axle.end === 'rear' && (angle === 'caster' || angle === 'sai'))) continue
    for (const side of sides) targets[`${axle.end} ${side} ${angle}`] = { middle, within }
  }
  return targets
}

const startOf = (knob: Knob): number => (knob.adjuster.kind === 'offset sleeve' ? 0 : middleOf(knob))

function springsOf(luck: Chance): TrueVehicle['springs'] {
  const more = luck.world === 'other' ? 1.4 : 1
  const both = { front: luck.normal(more * scatter.springs), rear: luck.normal(more * scatter.springs) }
  const springs = {} as Record<ExaminedWheel, number>
  for (const wheel of wheels)
    springs[wheel] = both[wheel.startsWith('front') ? 'front' : 'rear'] + luck.normal(more * scatter.spring)
  return springs
}

function pickFault(vehicle: TrueVehicle, luck: Chance, kind: FaultJobOptions['fault']): Fault | null {
  const all = faultsOf(vehicle).filter(({ suspect }) => kind === undefined || suspect.kind === kind)
  const kinds = [...new Set(all.map(({ suspect }) => suspect.kind))]
  if (kinds.length === 0) return null
  const one = luck.weighted(kinds, (k) =>
    luck.world === 'other' ? 1 : frequencies[k as keyof typeof frequencies].weight,
  )
  return luck.weighted(
    all.filter(({ suspect }) => suspect.kind === one),
    ({ share }) => share ?? 1,
  )
}

/** Two faults as one, and the second by itself. */
export interface TwoFaults {
  readonly both: Fault
  readonly first: (vehicle: TrueVehicle, size: number) => TrueVehicle
  readonly second: (vehicle: TrueVehicle) => TrueVehicle
  readonly suspect: Suspect
}

const adjusting = /eccentric|adjuster|tyre/

function secondFault(vehicle: TrueVehicle, luck: Chance, one: Fault): TwoFaults | null {
  const other = pickFault(vehicle, luck, undefined)!
  const { suspect } = other
  const unlike = suspect.kind !== one.suspect.kind || suspect.side !== one.suspect.side
  if (!unlike || adjusting.test(suspect.kind) || adjusting.test(one.suspect.kind)) return null
  const size = luck.sized(frequencies[suspect.kind as keyof typeof frequencies].size)
  const seeds = [luck.between(0, 2 ** 31), luck.between(0, 2 ** 31)].map(Math.floor)
  // each of them the same whether it comes alone or with the other
  const first = (v: TrueVehicle, s: number) => one.apply(v, s, chance(seeds[0]!, luck.world))
  const second = (v: TrueVehicle) => other.apply(v, size, chance(seeds[1]!, luck.world))
  return {
    both: { suspect: one.suspect, apply: (v, s) => second(first(v, s)) },
    first,
    second,
    suspect,
  }
}

function historyOf(condition: string, picked: Fault | null, luck: Chance): keyof typeof shares.history {
  const all = Object.keys(shares.history) as (keyof typeof shares.history)[]
  const one = luck.weighted(all, (h) => shares.history[h])
  const ofAdjuster = /eccentric|adjuster/.test(picked?.suspect.kind ?? '')
  return condition !== 'faulty' || ofAdjuster ? 'set before' : one
}

/** The vehicle without and with its fault, both with the settings that its life has given it. */
function lived(
  blank: TrueVehicle,
  {
    picked,
    size,
    targets,
    story,
    luck,
  }: {
    readonly picked: Fault | null
    readonly size: number
    readonly targets: Targets
    readonly story: string
    readonly luck: Chance
  },
): { healthy: TrueVehicle; faulty: TrueVehicle } {
  const set = (vehicle: TrueVehicle): readonly AxleState[] => {
    const heights = travels(vehicle.springs)
    return vehicle.axles.map((axle, i) => {
      const travel = { left: heights[`${axle.end} left`], right: heights[`${axle.end} right`] }
      return story === 'never'
        ? setAnywhere(axle, vehicle.states[i]!, 0.25, luck)
        : fitSizes(axle, setInside(axle, vehicle.states[i]!, { targets, travel, luck }))
    })
  }
  if (!picked) {
    const healthy = { ...blank, states: set(blank) }
    return { healthy, faulty: healthy }
  }
  if (story !== 'set after') {
    const healthy = { ...blank, states: set(blank) }
    return { healthy, faulty: picked.apply(healthy, size, luck) }
  }
  const broken = picked.apply(blank, size, luck)
  const after = set(broken)
  return {
    healthy: {
      ...blank,
      states: blank.states.map((state, i) => ({ ...state, settings: after[i]!.settings })),
    },
    faulty: { ...broken, states: after },
  }
}

/** Wedges and shims can only be had in sizes. */
function fitSizes(axle: TrueAxle, state: AxleState): AxleState {
  const knobs = knobsOf(axle).filter(({ adjuster: { kind } }) => kind === 'wedge' || kind === 'shims')
  return withSettings(
    state,
    knobs,
    knobs.map((knob) => {
      const { step } = knob.adjuster
      return inRange(knob, Math.round(settingOf(state, knob) / step) * step)
    }),
  )
}

/** One to three adjusters of a sound vehicle are somewhere else than they were set. */
function misadjusted(vehicle: TrueVehicle, luck: Chance): TrueVehicle {
  const places = vehicle.axles.flatMap((axle, i) =>
    knobsOf(axle)
      .filter(({ adjuster: { kind } }) => kind !== 'sub-frame shift' && kind !== 'wedge')
      .map((knob) => ({ i, knob })),
  )
  let { states } = vehicle
  for (let k = luck.oneOf([1, 1, 2, 3]); k > 0; k--) {
    const { i, knob } = luck.oneOf(places)
    const far = knob.adjuster.kind === 'thread' ? luck.between(0.03, 0.35) : luck.between(0.2, 0.9)
    const setting = inRange(knob, settingOf(states[i]!, knob) + luck.sign() * far * halfRange(knob))
    states = states.map((state, at) => (at === i ? withSettings(state, [knob], [setting]) : state))
  }
  return { ...vehicle, states }
}
