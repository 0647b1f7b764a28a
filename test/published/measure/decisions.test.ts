import { decide, normal, normalCdf, normalQuantile, probabilityInside } from '../../../src/measure/index.ts'
import { published } from '../../support/published.ts'

const iso = 'ISO 14253-1:2017, decision rules, default 95 % (g = 1.65 u)'
const at = (value: number) => decide(normal(1, 'u', value), { low: -100, high: 0 }).probability

published('ME8 conformance', [
  {
    id: 'jcgm106.7.4',
    got: probabilityInside(normal(1.8, 'u', 13.6), { low: 12.5, high: 16.3 }),
    // z = −0.611 and 1.500 taken from a table; to four places by computation
    want: 0.6626,
    within: 0.00005,
    source: 'JCGM 106:2012, 7.4, example',
  },
  {
    id: 'jcgm106.8.3.2',
    // a reading one expanded uncertainty (k = 2) inside the limit
    got: 1 - probabilityInside(normal(1, 'u', -2), { high: 0 }),
    want: 0.0228,
    within: 0.00005,
    source: 'JCGM 106:2012, 8.3.2; ILAC-G8:09/2019',
    basis: 'from memory',
  },
  { id: 'iso14253-1.g', got: normalQuantile(0.95), want: 1.6449, within: 0.00005, source: iso },
  { id: 'iso14253-1.g.rounded', got: normalQuantile(0.95), want: 1.65, within: 0.0055, source: iso },
  { id: 'iso14253-1.at-guard', got: at(-1.6449), want: 0.95, within: 0.00001, source: iso, basis: 'derived' },
  { id: 'iso14253-1.beyond', got: at(1.6449), want: 0.05, within: 0.00001, source: iso, basis: 'derived' },
  { id: 'iso14253-1.on-limit', got: at(0), want: 0.5, within: 1e-9, source: iso, basis: 'derived' },
  {
    id: 'normal.1',
    got: normalCdf(1) - normalCdf(-1),
    want: 0.6827,
    within: 0.00005,
    source: 'JCGM 100:2008, Table G.1',
    basis: 'from memory',
  },
  {
    id: 'normal.2',
    got: normalCdf(2) - normalCdf(-2),
    want: 0.9545,
    within: 0.00005,
    source: 'JCGM 100:2008, Table G.1',
    basis: 'from memory',
  },
  {
    id: 'normal.3',
    got: normalCdf(3) - normalCdf(-3),
    want: 0.9973,
    within: 0.00005,
    source: 'JCGM 100:2008, Table G.1',
    basis: 'from memory',
  },
])
