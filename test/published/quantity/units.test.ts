import {
  inDegrees,
  inMillimetres,
  parseAngle,
  parseDistance,
  parseForce,
  parseLength,
  parsePressure,
  parseTorque,
} from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

// The printed factors were remembered and worked out again from the exact definitions, so none counts as read.
const source = 'NIST SP 811 (2008), appendix B.8 and B.9'
const basis = 'from memory'

// Exact factors to one part in 1e15 (a few doubles); printed ones to half their last digit.
published('QU1 one of each unit', [
  { id: 'unit.lbf_ft', got: parseTorque('1 lbf·ft'), want: 1.355818, within: 5.0e-7, source, basis },
  { id: 'unit.lbf_in', got: parseTorque('1 lbf·in'), want: 0.1129848, within: 5.0e-8, source, basis },
  { id: 'unit.ozf_in', got: parseTorque('1 ozf·in'), want: 7.061552e-3, within: 5.0e-10, source, basis },
  { id: 'unit.kgf_m', got: parseTorque('1 kgf·m'), want: 9.80665, within: 9.8e-15, source, basis },
  { id: 'unit.kgf_cm', got: parseTorque('1 kgf·cm'), want: 0.0980665, within: 9.8e-17, source, basis },
  { id: 'unit.lbf', got: parseForce('1 lbf'), want: 4.448222, within: 5.0e-7, source, basis },
  { id: 'unit.kgf', got: parseForce('1 kgf'), want: 9.80665, within: 9.8e-15, source, basis },
  { id: 'unit.in', got: inMillimetres(parseLength('1 in')), want: 25.4, within: 2.5e-14, source, basis },
  { id: 'unit.ft', got: parseLength('1 ft'), want: 0.3048, within: 3.0e-16, source, basis },
  { id: 'unit.mi', got: parseDistance('1 mi') / 1000, want: 1.609344, within: 1.6e-15, source, basis },
  { id: 'unit.psi', got: parsePressure('1 psi'), want: 6.894757e3, within: 5.0e-4, source, basis },
  { id: 'unit.ksi', got: parsePressure('1 ksi') / 1e6, want: 6.894757, within: 5.0e-7, source, basis },
  { id: 'unit.bar', got: parsePressure('1 bar') / 1000, want: 100, within: 1.0e-13, source, basis },
  { id: 'unit.deg', got: parseAngle('1°'), want: 1.745329e-2, within: 5.0e-9, source, basis },
  { id: 'unit.arcmin', got: parseAngle('1′'), want: 2.908882e-4, within: 5.0e-11, source, basis },
  { id: 'unit.arcsec', got: parseAngle('1″'), want: 4.848137e-6, within: 5.0e-13, source, basis },
  {
    id: 'unit.inch_thou',
    got: inMillimetres(parseLength('1 thou')),
    want: 0.0254,
    within: 2.5e-17,
    source,
    basis,
  },
])

published('QU2 degrees, minutes and seconds', [
  {
    id: "unit.dms.0\u00b030'",
    got: inDegrees(parseAngle(`0°30'`)),
    want: 0.5,
    within: 1e-12, // exact in decimals but for the doubles
    source: 'SI Brochure and NIST SP 811, table 6',
    basis,
  },
  {
    id: "unit.dms.1\u00b015'",
    got: inDegrees(parseAngle(`1°15'`)),
    want: 1.25,
    within: 1e-12, // exact in decimals but for the doubles
    source: 'SI Brochure and NIST SP 811, table 6',
    basis,
  },
  {
    id: "unit.dms.-0\u00b045'",
    got: inDegrees(parseAngle(`-0°45'`)),
    want: -0.75,
    within: 1e-12, // exact in decimals but for the doubles
    source: 'SI Brochure and NIST SP 811, table 6',
    basis,
  },
  {
    id: 'unit.dms.12\u00b006\'36"',
    got: inDegrees(parseAngle(`12°06'36"`)),
    want: 12.11,
    within: 1e-12, // exact in decimals but for the doubles
    source: 'SI Brochure and NIST SP 811, table 6',
    basis,
  },
  {
    id: "unit.dms.0\u00b005'",
    got: inDegrees(parseAngle(`0°05'`)),
    want: 0.08333333333333333,
    within: 1e-12, // exact in decimals but for the doubles
    source: 'SI Brochure and NIST SP 811, table 6',
    basis,
  },
])
