import { describe } from 'vitest'
import { reTightening, tighteningSequence } from '../../../src/fasten/index.ts'
import { Nm } from '../../../src/quantity/index.ts'
import { type PublishedRow, published } from '../../support/published.ts'

describe('FA15 rings', () => {
  const stages = [Nm(55), Nm(110)]
  /** Sequences that keep the rule “approximately diametrically opposed nuts in turn”. */
  const rows: readonly (readonly number[])[] = [
    [1, 3, 2, 4],
    [1, 3, 5, 2, 4],
    [1, 4, 2, 5, 3, 6],
    [1, 5, 3, 7, 2, 6, 4, 8],
    [1, 6, 3, 8, 5, 10, 2, 7, 4, 9],
  ]
  published(
    'sequences',
    rows.flatMap((sequence): PublishedRow[] =>
      sequence.map((want, i) => ({
        id: `${sequence.length} studs, turn ${i + 1}`,
        got: tighteningSequence({ count: sequence.length, stages }).order[i]!,
        want,
        within: 0.5,
        source: 'constructed to keep the rule of UK DVSA, “Careless torque costs lives”, Care of wheels',
        basis: 'derived',
      })),
    ),
  )
})

describe('FA16 tightened again', () => {
  const MILE = 1609.344
  const by = (source: string) => reTightening.find((row) => row.source.startsWith(source))!
  const army = by('US Army')
  const irte = by('Society')
  const tmc = by('TMC')
  const tia = by('Tire')
  const copy = (source: string) => `${source}, read in a public copy`
  published('distances and time', [
    {
      id: 'tm5-3820 miles',
      got: army.distance!.from / MILE,
      want: 50,
      within: 0.5,
      source: copy(army.source),
    },
    { id: 'tm5-3820 km', got: army.distance!.to / 1000, want: 80, within: 0.5, source: copy(army.source) },
    { id: 'soe minutes', got: irte.time! / 60, want: 30, within: 0.5, source: copy(irte.source) },
    {
      id: 'soe miles, from',
      got: irte.distance!.from / MILE,
      want: 25,
      within: 0.5,
      source: copy(irte.source),
    },
    { id: 'soe miles, to', got: irte.distance!.to / MILE, want: 50, within: 0.5, source: copy(irte.source) },
    {
      id: 'rp237 miles, from',
      got: tmc.distance!.from / MILE,
      want: 50,
      within: 0.5,
      source: copy(tmc.source),
    },
    { id: 'rp237 miles, to', got: tmc.distance!.to / MILE, want: 100, within: 0.5, source: copy(tmc.source) },
    {
      id: 'tia miles, from',
      got: tia.distance!.from / MILE,
      want: 50,
      within: 0.5,
      source: copy(tia.source),
    },
    { id: 'tia miles, to', got: tia.distance!.to / MILE, want: 100, within: 0.5, source: copy(tia.source) },
  ])
})
