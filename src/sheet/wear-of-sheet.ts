import type { Corner } from '../corner/index.ts'
import { jointLetters } from '../corner/index.ts'
import { playReading } from '../gauge/index.ts'
import type { JobState, PlayFact } from '../job/index.ts'
import { wheelPlace } from '../job/index.ts'
import { instrumentsOf, wearLimitsFor } from '../kit/index.ts'
import { decide, type Measured, propagate } from '../measure/index.ts'
import { formatChance, formatLength, Refusal, type UnitChoice } from '../quantity/index.ts'
import type { HeldLimit } from './held-limit.ts'
import { publicWearLimits } from './public-wear-limits.ts'
import type { SheetWear } from './sheet.ts'
import { sheetNumber } from './sheet-number.ts'
import { cornerAt, type SheetSources } from './sources.ts'

/**
 * Every play that was found, against the limit of the workshop, the maker or the inspection, with whose it is. The verdict
 * carries the dial's spread; where nobody typed a limit there is none.
 *
 * @returns rows in the order found, and what could not be read
 * @source JCGM 106:2012, 8.3, for the verdict; own derivation: docs/methods/inspection-limits.md
 */
export function sheetWear(
  sources: SheetSources,
  state: JobState,
  { units, threshold }: { readonly units: UnitChoice; readonly threshold: number },
): { readonly rows: readonly SheetWear[]; readonly troubles: readonly string[] } {
  const { spec, kit } = sources
  const context = { instruments: kit ? instrumentsOf(kit) : [] }
  const rows: SheetWear[] = []
  const troubles: string[] = []
  for (const fact of state.play) {
    const { axle } = wheelPlace(fact.wheel)
    const corner = cornerAt(sources, axle)
    const model = corner?.joints[fact.joint]
    try {
      const angle = playReading(fact.observation, context).measured
      const swing = propagate(([a]) => Math.tan(a!) * fact.observation.arm, [angle])
      const typed = model ? wearLimitsFor({ spec, kit, axle, joint: fact.joint, kind: model.kind }) : []
      const limits = [
        ...typed.map((limit) => ({ ...limit, of: swing })),
        ...(corner ? publicWearLimits({ corner, fact, swing, kit }) : []),
      ]
      rows.push(row({ fact, corner, state, swing, limits, units, threshold }))
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal
      troubles.push(
        `Play of the ${fact.joint.replaceAll('-', ' ')}, ${fact.wheel}: ${refusal.sentence} ${refusal.remedy}`,
      )
    }
  }
  return { rows, troubles }
}

function row(one: {
  readonly fact: PlayFact
  readonly corner: Corner | null
  readonly state: JobState
  readonly swing: Measured
  readonly limits: readonly HeldLimit[]
  readonly units: UnitChoice
  readonly threshold: number
}): SheetWear {
  const { fact, corner, state, swing, limits, units, threshold } = one
  const model = corner?.joints[fact.joint]
  const length = { kind: 'length', unit: units.length } as const
  const first = limits.find(({ limit }) => limit !== null) ?? null
  const decision = first ? decide(first.of, { high: first.limit! }, { threshold }) : null
  const since = sinceThen(fact, state, model?.joins ?? [])
  const joint = model?.name ?? fact.joint.replaceAll('-', ' ')
  const verdict = decision?.verdict ?? 'no limit'
  return {
    wheel: fact.wheel,
    joint: fact.joint,
    name: joint,
    letter: corner ? (jointLetters(corner)[fact.joint] ?? null) : null,
    direction: fact.direction,
    play: sheetNumber(swing, length),
    limits: limits.map(({ what, limit, text, whose, jurisdiction, source }) => ({
      what,
      text:
        limit === null
          ? text
          : formatLength(limit, { unit: units.length, digits: units.length === 'in' ? 3 : 2 }),
      typed: text,
      whose,
      jurisdiction,
      source,
    })),
    probability: decision?.probability ?? null,
    verdict,
    provable: decision?.provable ?? null,
    since,
    sentence: said({ verdict, probability: decision?.probability ?? null, since }),
    inputs: fact.typings.map(({ entry, path, text }) => ({
      entry,
      path,
      label: path.startsWith('swings') ? 'swing of the dial' : 'pivot to the dial',
      text,
    })),
  }
}

/** What happened to the joint after it was read: a part of it renewed, or read again. */
function sinceThen(fact: PlayFact, state: JobState, joins: readonly string[]): SheetWear['since'] {
  const renewed = state.renewed.some(
    (part) => part.entry > fact.entry && part.wheels.includes(fact.wheel) && joins.includes(part.part),
  )
  if (renewed) return 'renewed'
  const again = state.play.some(
    (other) =>
      other.entry > fact.entry &&
      other.wheel === fact.wheel &&
      other.joint === fact.joint &&
      other.direction === fact.direction,
  )
  return again ? 'read again' : null
}

function said({ verdict, probability, since }: Pick<SheetWear, 'verdict' | 'probability' | 'since'>): string {
  const then = since === 'renewed' ? ' Renewed since.' : since === 'read again' ? ' Read again since.' : ''
  if (verdict === 'no limit')
    return `No limit is typed for it: look it up in your own information; none is made up here.${then}`
  const sure = formatChance(probability!)
  if (verdict === 'inside') return `Within its limit.${then}`
  if (verdict === 'outside')
    return since === null
      ? 'Worn past its limit: renew it before any angle is set.'
      : `Was past its limit.${then}`
  return `Not proven either way (${sure} to be within): read it again, with more swings or a better dial.${then}`
}
