import { torqueThrough, wrenchSetting } from '../../../src/fasten/index.ts'
import { deg, inch, lbfFt, lbfIn } from '../../../src/quantity/index.ts'
import { published } from '../../support/published.ts'

const faa = 'FAA AC 43.13-1B, chapter 7, worked examples of torque wrench adapters'
const page = 'a public page on adapters of torque wrenches, worked problem'
const marine = 'a public page of lessons for marine mechanics, worked example'

published('FA8 adapters, worked examples of others', [
  {
    id: 'ac4313.lengthen',
    got: wrenchSetting({ torque: lbfIn(135), reach: inch(10), offset: inch(1.5), angle: deg(0) }),
    want: lbfIn(117.39),
    within: lbfIn(0.005),
    source: faa,
    basis: 'from memory',
  },
  {
    id: 'ac4313.shorten',
    got: wrenchSetting({ torque: lbfIn(135), reach: inch(10), offset: inch(1.5), angle: deg(180) }),
    want: lbfIn(158.82),
    within: lbfIn(0.005),
    source: faa,
    basis: 'from memory',
  },
  {
    id: 'page.30-lbf·ft',
    got: wrenchSetting({ torque: lbfFt(30), reach: inch(12), offset: inch(6), angle: deg(0) }),
    want: lbfFt(20),
    within: lbfFt(0.5),
    source: page,
  },
  {
    id: 'marine.setting',
    // it prints the factor, 0.86
    got: wrenchSetting({ torque: lbfFt(1), reach: inch(18), offset: inch(3), angle: deg(0) }),
    want: lbfFt(0.86),
    within: lbfFt(0.005),
    source: marine,
  },
  {
    id: 'marine.received',
    got: torqueThrough({ setting: lbfFt(1), reach: inch(18), offset: inch(3), angle: deg(0) }),
    want: lbfFt(1.17),
    within: lbfFt(0.005),
    source: marine,
  },
])
