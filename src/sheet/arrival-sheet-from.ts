import { foldJob, type HeightFact, type JobState } from '../job/index.ts'
import { vinHints } from '../spec/index.ts'
import type { ArrivalOptions, ArrivalSheet, ArrivalWheel } from './arrival-sheet.ts'
import { arrivalCautions, arrivalStanding } from './arrival-sheet-cautions.ts'
import { arrivalMissing } from './arrival-sheet-missing.ts'
import { arrivalNoted } from './arrival-sheet-noted.ts'
import type { SheetSources } from './sources.ts'

/** Once round the vehicle. */
const round = ['front left', 'front right', 'rear right', 'rear left'] as const

/**
 * What is told and looked at before anything is undone: what is noted of it, what is missing and why that matters, and
 * the one next thing. Pure.
 *
 * @source own derivation: docs/methods/arrival-and-handover.md
 */
export function arrivalSheetFrom(sources: SheetSources, options: ArrivalOptions = {}): ArrivalSheet {
  const { job, kit } = sources
  const { entries } = job
  const state = foldJob(entries)
  const { arrival, pressures, opened } = state
  const noted = (fact: Parameters<typeof arrivalNoted>[0]) => arrivalNoted(fact, entries, options)
  const isLifted = wasLifted(state)
  const wheels = round.map((wheel): ArrivalWheel => {
    const tyre = state.tyres.findLast((one) => one.wheel === wheel)
    const height =
      state.heights.findLast((one) => one.wheel === wheel && one.when === 'before lifting') ??
      state.heights.find((one) => one.wheel === wheel && one.when === 'settled')
    return {
      wheel,
      tyre: tyre ? { ...noted(tyre), wear: tyre.wear ?? [] } : null,
      height: height ? { ...noted(height), ...heightTexts(height) } : null,
    }
  })
  const rule = Object.entries(kit?.gauges ?? {}).find(([, { kind }]) => kind === 'rule')
  const missing = arrivalMissing(state, wheels, isLifted)
  const told = arrival && noted(arrival)
  const vin = told?.texts['vin']
  return {
    vehicle: opened?.vehicle ?? 'Vehicle not named',
    job: job.job,
    complaint: opened?.complaint ?? '',
    arrival: told,
    vinHint: vin === undefined || vin === 'erased' ? null : vinHints(vin).hints.join(' ') || null,
    wheels,
    pressures: pressures && noted(pressures),
    rule: rule ? { id: rule[0], name: rule[1].name } : { id: 'rule', name: 'rule' },
    heightWhen: isLifted ? 'settled' : 'before lifting',
    cautions: arrivalCautions(sources, state),
    standing: arrivalStanding,
    missing,
    next: nextOf(missing, arrival !== null, isLifted),
    troubles: state.troubles
      .filter((trouble) => trouble.entries.some((entry) => ofArrival.includes(entries[entry]?.kind ?? '')))
      .map(({ sentence, remedy }) => `${sentence} ${remedy}`),
  }
}

const ofArrival: readonly string[] = ['arrival', 'tyre', 'set pressures', 'ride height']

/** Something but its own wheels carries it, or a joint was opened; nuts are cracked while it stands. */
const wasLifted = ({ carried, undone }: JobState): boolean =>
  undone.some(({ to }) => to !== 'cracked') ||
  carried.some(({ by }) => by === 'jack' || by === 'stands' || by === 'lift')

/** A height's texts stand in its observation; its entry calls them readings. */
const heightTexts = ({ typings, when }: HeightFact) => ({
  texts: Object.fromEntries(typings.map(({ path, text }) => [path, text])),
  when: when === 'settled' ? when : ('before lifting' as const),
})

/** The one next thing: what is gone once the vehicle is lifted stands before what can be asked later. */
function nextOf(missing: ArrivalSheet['missing'], isNoted: boolean, isLifted: boolean): ArrivalSheet['next'] {
  const lacks = (place: ArrivalSheet['missing'][number]['place']) =>
    missing.some((one) => one.place === place)
  if (!isNoted)
    return {
      sentence: 'Note first what the owner asked for, and whether it may be driven.',
      button: 'To what was told',
      place: 'told',
    }
  if (lacks('pressures'))
    return {
      sentence: 'Look at the tyres and set their pressures: heights and angles follow them.',
      button: 'To the pressures',
      place: 'pressures',
    }
  if (lacks('heights'))
    return {
      sentence: isLifted
        ? 'It was lifted before its heights were measured: let it down, settle it, and measure them.'
        : 'Measure the ride heights now: once it is lifted they are gone.',
      button: 'To the ride heights',
      place: 'heights',
    }
  const [first] = missing
  return {
    sentence: first
      ? `That is enough to begin. Not noted: ${lowered(first.what)}; ${first.why}.`
      : 'All of it is noted. What explains the complaint is found next.',
    button: 'To the findings',
    place: null,
  }
}

const lowered = (words: string) =>
  words.startsWith('VIN') ? words : `${words.charAt(0).toLowerCase()}${words.slice(1)}`
