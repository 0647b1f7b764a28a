import { deservedPlaces, formatLength, metre } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

// The guide's own examples, remembered: 10.057 62 Ω with 27 mΩ becomes 10.058 Ω; 28.05 kHz becomes 28 kHz.
const source = 'JCGM 100:2008, 7.2.6'
const basis = 'from memory'

published('QU7 digits by the spread', [
  { id: 'gum.7.2.6 place', got: deservedPlaces(0.027), want: 3, within: 1e-9, source, basis },
  {
    id: 'gum.7.2.6 value',
    // The number counts here, not its unit.
    got: Number.parseFloat(formatLength(metre(10.05762), { unit: 'm', spread: 0.027 })),
    want: 10.058,
    within: 1e-9, // the digits themselves
    source,
    basis,
  },
  { id: 'gum.7.2.6 spread 28.05', got: deservedPlaces(28.05), want: 0, within: 1e-9, source, basis },
])
