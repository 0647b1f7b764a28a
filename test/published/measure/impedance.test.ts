import { correlation, propagate, readTogether, standardUncertainty } from '../../../src/measure/index.ts'
import { published } from '../../support/published.ts'

const inputs = readTogether(
  [
    [5.007, 4.994, 5.005, 4.99, 4.999],
    [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
    [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
  ],
  'five rounds',
)
const R = propagate(([v, i, p]) => (v! / i!) * Math.cos(p!), inputs)
const X = propagate(([v, i, p]) => (v! / i!) * Math.sin(p!), inputs)
const Z = propagate(([v, i]) => v! / i!, inputs)
const source = 'JCGM 100:2008, Annex H.2, Tables H.2-H.4'

published('ME14 resistance, reactance, impedance from readings taken together', [
  { id: 'gum.H2.R', got: R.value, want: 127.732, within: 0.0005, source },
  { id: 'gum.H2.X', got: X.value, want: 219.847, within: 0.0005, source },
  { id: 'gum.H2.Z', got: Z.value, want: 254.26, within: 0.0005, source },
  { id: 'gum.H2.uR', got: standardUncertainty(R), want: 0.071, within: 0.0005, source },
  // Full precision gives 0.29558; the source cuts where it should round, so one unit of the last digit.
  { id: 'gum.H2.uX', got: standardUncertainty(X), want: 0.295, within: 0.001, source },
  { id: 'gum.H2.uZ', got: standardUncertainty(Z), want: 0.236, within: 0.0005, source },
  { id: 'gum.H2.rRX', got: correlation(R, X), want: -0.588, within: 0.0005, source },
  { id: 'gum.H2.rRZ', got: correlation(R, Z), want: -0.485, within: 0.0005, source },
  { id: 'gum.H2.rXZ', got: correlation(X, Z), want: 0.993, within: 0.0005, source },
])
