import {
  type LearnedResponse,
  learnAcrossJobs,
  learnedFactors,
  type PastResponse,
  priorResponse,
  type TaughtByJobs,
  taughtPrior,
  type WheelSetup,
} from '../adjust/index.ts'
import { adjustersOf, type Corner, cornerPoints } from '../corner/index.ts'
import { foldJob } from '../job/index.ts'
import { normal } from '../measure/index.ts'
import { formatPercent, metre, metricUnits, rad } from '../quantity/index.ts'
import { firstMoveOf } from './first-move-of.ts'
import { firstMoveSuccess } from './first-move-success.ts'
import type { LearnedModel, LearnedMove, LearnedOf, LearnedSheet } from './learned-sheet.ts'
import { factorText } from './learned-words.ts'
import { cornerOfJob, nameOfJob } from './past-job.ts'
import { responsesOf } from './responses-of.ts'
import { sheetNumber } from './sheet-number.ts'
import { cornerAt, type SheetOptions, type SheetSources } from './sources.ts'
import { pointsKnown } from './wheel-setups.ts'

/**
 * What some jobs teach together: of each drawing that they turned at, how its adjusters answer on the next vehicle; how often
 * first moves ended inside, over time; and which job is hardly believed. A job that is given twice counts once.
 *
 * @source own derivation: docs/methods/learned-response.md
 */
export function learnedOfJobs(
  all: readonly SheetSources[],
  { units = metricUnits }: Pick<SheetOptions, 'units'> = {},
): LearnedSheet {
  const jobs = [
    ...new Map(
      all.map((sources) => [nameOfJob(sources, foldJob(sources.job.entries)).job, sources] as const),
    ),
  ]
  const past = jobs.map(([job, sources]) => ({ job, sources, responses: responsesOf(sources) }))
  const taught = learnAcrossJobs(past.flatMap(({ responses }) => responses))
  const firsts = jobs.flatMap(([, sources]) => firstMoveOf(sources) ?? [])
  const teaching = past.filter(({ responses }) => responses.length > 0)
  const corners = cornersOf(teaching)
  return {
    jobs: teaching.length,
    models: modelsOf(corners, taught),
    split: teaching.length === 0 ? null : splitText(taught),
    doubted: [...taught.trust].filter(([, trust]) => trust < 1 / 2).map(([job]) => job),
    moves: teaching.flatMap(({ responses }) =>
      responses.flatMap((one) => movesText(one, corners.get(one.model)!, units)),
    ),
    success: firstMoveSuccess(firsts),
    silent: past.filter(({ responses }) => responses.length === 0).map(({ job }) => job),
  }
}

interface Teaching {
  readonly sources: SheetSources
  readonly responses: readonly PastResponse[]
}

/** The drawings of some jobs by their marks. */
function cornersOf(teaching: readonly Teaching[]): ReadonlyMap<string, Corner> {
  const corners = new Map<string, Corner>()
  for (const { sources } of teaching)
    for (const end of ['front', 'rear'] as const) {
      const corner = cornerAt(sources, end)
      if (corner) corners.set(cornerOfJob(corner).model, corner)
    }
  return corners
}

function modelsOf(corners: ReadonlyMap<string, Corner>, taught: TaughtByJobs): readonly LearnedModel[] {
  return [...corners].flatMap(([model, corner]): LearnedModel[] => {
    const own = taught.past.filter((one) => one.model === model)
    if (own.length === 0) return []
    const { layout } = cornerOfJob(corner)
    const wide = taught.past.filter((one) => one.layout === layout)
    const vehicles = [...new Set(own.map(({ vehicle }) => vehicle))].sort()
    const level = (of: string, jobs: readonly PastResponse[], who: { model: string; vehicle: string }) =>
      levelOf(corner, taught, { of, jobs: jobsIn(jobs), who: { ...who, layout } })
    return [
      {
        model,
        name: corner.name,
        layout: corner.layout,
        jobs: jobsIn(own),
        levels: [
          level('another model of this layout', wide, { model: '', vehicle: '' }),
          level('another vehicle of this model', own, { model, vehicle: '' }),
          ...vehicles.map((vehicle) =>
            level(
              `${vehicle}, again`,
              own.filter((one) => one.vehicle === vehicle),
              { model, vehicle },
            ),
          ),
        ],
      },
    ]
  })
}

const jobsIn = (past: readonly PastResponse[]) => new Set(past.map(({ job }) => job)).size

function levelOf(
  corner: Corner,
  taught: TaughtByJobs,
  { of, jobs, who }: { of: string; jobs: number; who: Parameters<typeof taughtPrior>[3] },
): LearnedOf {
  const wheel: WheelSetup = {
    points: cornerPoints(corner),
    drive: { travel: metre(0), rack: metre(0) },
    adjusters: adjustersOf(corner),
    settings: {},
  }
  const from = { known: pointsKnown(corner), source: corner.id }
  const said = (response: LearnedResponse) => learnedFactors(wheel, response)
  const before = said(priorResponse(wheel, from))
  return {
    of,
    jobs,
    answers: said(taughtPrior(wheel, from, taught, who)).map((one, i) => ({
      adjuster: one.adjuster.name,
      angle: one.angle,
      text: factorText(one),
      factor: one.factor,
      spread: one.spread,
      before: before[i]!.spread,
    })),
  }
}

/** The mean of the splits by their weights. */
function splitText({ splits }: TaughtByJobs): string {
  const mean = (of: (split: (typeof splits)[number]['split']) => number) =>
    splits.reduce((sum, { split, weight }) => sum + weight * of(split), 0)
  const whole = ({ layout, model, vehicle, visit }: (typeof splits)[number]['split']) =>
    layout + model + vehicle + visit
  const share = (of: 'layout' | 'model' | 'vehicle' | 'visit') =>
    formatPercent(
      mean((split) => split[of] / whole(split)),
      { digits: 0 },
    )
  return `common to a layout ${share('layout')}, to a model ${share('model')}, a vehicle’s own ${share('vehicle')}, a visit’s own ${share('visit')}; altogether ${Math.sqrt(mean(whole)).toFixed(1)} times as far as points so known are taken to be off`
}

function movesText(
  { job, angle, moves, noise, when }: PastResponse,
  { axle }: Corner,
  units: NonNullable<SheetOptions['units']>,
): readonly LearnedMove[] {
  const angleText = (value: number, u: number) => {
    const { text, spread } = sheetNumber(
      { ...normal(u, 'read'), value: rad(value) },
      { kind: 'angle', unit: units.angle, sign: true },
    )
    return { text, spread }
  }
  return moves.map(({ side, turned, foreseen, seen }, i) => {
    const u = Math.sqrt(noise[i * (moves.length + 1)]!)
    const read = angleText(seen, u)
    return {
      job,
      turned: `${axle} ${side}, ${turned.join(' and ')}`,
      angle,
      foreseen: angleText(foreseen, u).text,
      seen: `${read.text} ${read.spread}`,
      when,
    }
  })
}
