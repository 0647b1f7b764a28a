import type { EntryData } from './entries-schema.ts'
import type { Told } from './told.ts'

/**
 * Kinds of entries that the fold keeps as they are told, one list each.
 *
 * @source definition
 */
export const gathered = {
  tyre: 'tyres',
  measured: 'measured',
  'road test': 'roadTests',
  'hand check': 'handChecks',
  mark: 'marks',
  undone: 'undone',
  tightened: 'tightenings',
  pinned: 'pins',
  checked: 'secondChecks',
  photo: 'photos',
  deviation: 'deviations',
  carried: 'carried',
  placed: 'placed',
  compared: 'comparisons',
  spring: 'springs',
  line: 'lines',
  pedal: 'pedals',
  steering: 'steerings',
  tag: 'tags',
  decision: 'decisions',
  'extra work': 'extraWork',
  'follow-up': 'followUps',
  electronics: 'electronics',
  'not road-ready': 'notRoadReady',
  cleared: 'cleared',
  'came back': 'cameBack',
  'caution acknowledged': 'cautions',
  note: 'notes',
  'works with': 'worksWith',
  'taken back': 'takenBack',
  'signed off': 'signedOff',
} as const

type Kind = keyof typeof gathered

/** What is gathered, by the list's name. @source definition */
export type Gathered = {
  readonly [K in Kind as (typeof gathered)[K]]: readonly (Told & EntryData<K>)[]
}

/** A kind that is gathered. */
export const isGathered = (kind: string): kind is Kind => Object.hasOwn(gathered, kind)
