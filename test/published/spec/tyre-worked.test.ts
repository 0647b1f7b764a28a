import { inMillimetres } from '../../../src/quantity/index.ts'
import { parseTyre } from '../../../src/spec/index.ts'
import { published } from '../../support/published.ts'

// What tyre dealers work out on public pages. They round on the way: heights to 0.1 or 1 mm, rims to 1 mm; the height
// counts twice in the diameter.
const rows = [
  ['225/45R17', 101.3, 0.051, 634.4, 0.1 + 0.051],
  ['205/65R15', 133, 0.5, 647, 2 * 0.5 + 0.5],
  ['245/70R16', 171.5, 0.05, 749, 0.5],
] as const
const source = 'a tyre dealer’s public page, worked example'

published(
  'SP11 what a designation makes of a tyre, worked examples of others',
  rows.flatMap(([designation, height, heightWithin, diameter, diameterWithin]) => [
    {
      id: `dealer.${designation}.height`,
      got: inMillimetres(parseTyre(designation).sectionHeight),
      want: height,
      within: heightWithin,
      source,
    },
    {
      id: `dealer.${designation}.diameter`,
      got: inMillimetres(parseTyre(designation).diameter),
      want: diameter,
      within: diameterWithin,
      source,
    },
  ]),
)
