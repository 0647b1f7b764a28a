import {
  type CastleSlot,
  castleOnScale,
  type Joint,
  largestAdvance,
  type Step,
  type StepFigure,
} from '../fasten/index.ts'
import type { NewtonMetre, Radian, TorqueUnit } from '../quantity/index.ts'
import { formatAngle, formatTorque } from '../quantity/index.ts'
import type { DoingFigure } from './bolt-sheet.ts'
import type { ChosenWrench } from './wrench-for.ts'

/** The words of a figure, by what it is. */
const labels: Readonly<Record<StepFigure['label'], string>> = {
  torque: 'Torque',
  floor: 'Floor',
  ceiling: 'Ceiling',
  forward: 'Turn forward',
  back: 'Turn back',
}

/**
 * The numbers of a doing screen: on the scale of the wrench in the hand, with what the fastener receives beside it. A
 * castle nut shows floor, ceiling and turn together, since the hand needs all three.
 *
 * @param unit where no wrench is in the hand
 * @param at "at the nut"
 */
export function doingFigures({
  joint,
  step,
  stage,
  chosen,
  unit,
  at,
}: {
  readonly joint: Joint
  readonly step: Step | null
  /** "Stage 2 of 3"; empty for one pull. */
  readonly stage: string
  readonly chosen: ChosenWrench | null
  readonly unit: TorqueUnit
  readonly at: string
}): readonly DoingFigure[] {
  const { procedure } = joint
  const figures = procedure.kind === 'castle slot' ? castle(procedure, chosen) : (step?.figures ?? [])
  return figures.map(({ label, onWrench, atFastener, angle }): DoingFigure => {
    if (angle !== null) return { label: labels[label], ...split(degrees(angle), '°'), atFastener: '' }
    const name = label === 'torque' && stage !== '' ? stage : labels[label]
    if (onWrench === null || chosen === null)
      return { label: name, ...split(torque(atFastener!, unit), unit), atFastener: at }
    const { wrench } = chosen.ranked
    const value = torque(onWrench, wrench.unit)
    const there = torque(atFastener!, wrench.unit)
    return {
      label: `${name}, on the ${wrench.name}`,
      ...split(value, wrench.unit),
      atFastener: there === value ? '' : `${split(there, wrench.unit).value} ${at}`,
    }
  })
}

function castle(procedure: CastleSlot, chosen: ChosenWrench | null): readonly StepFigure[] {
  const { floor, ceiling } = procedure
  const marks = chosen === null ? null : castleOnScale({ floor, ceiling, ...chosen.ranked })
  return [
    { label: 'floor', onWrench: marks?.floor ?? null, atFastener: floor, angle: null },
    { label: 'ceiling', onWrench: marks?.ceiling ?? null, atFastener: ceiling, angle: null },
    { label: 'forward', onWrench: null, atFastener: null, angle: largestAdvance(procedure) },
  ]
}

const degrees = (angle: Radian): string => formatAngle(angle, { unit: '°', digits: 0 })

/** A torque as a scale is marked: whole where it is whole. */
export function torque(value: NewtonMetre, unit: TorqueUnit): string {
  const fine = formatTorque(value, { unit, digits: 1 })
  return /[.]0\D/.test(fine) ? formatTorque(value, { unit, digits: 0 }) : fine
}

const split = (text: string, unit: string) => ({ value: text.slice(0, -unit.length).trim(), unit })
