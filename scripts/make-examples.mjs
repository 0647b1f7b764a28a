// Makes the three demo jobs: what gauges would show on invented vehicles whose true state is known here.
// Run by hand after a change of the corner models:
//   node --import tsx scripts/make-examples.mjs && npx biome check --write examples
// The truth: exact poses of the corner models at the settings below, with the faults below, standing on the
// floor of bay 2; then the errors of the kit's gauges, drawn from a seeded generator, and their scales' steps.
import { unit03 } from './examples/unit-03.mjs'
import { unit07 } from './examples/unit-07.mjs'
import { unit12 } from './examples/unit-12.mjs'

unit07()
unit12()
unit03()
