import { carried } from './interlocks/i01-carried.ts'
import { wheelNuts } from './interlocks/i02-wheel-nuts.ts'
import { energyHeld } from './interlocks/i03-energy-held.ts'
import { energyBack } from './interlocks/i04-energy-back.ts'
import { taper } from './interlocks/i05-taper.ts'
import { hoseAndLead } from './interlocks/i06-hose-and-lead.ts'
import { bondedBush } from './interlocks/i07-bonded-bush.ts'
import { jackAtRideHeight } from './interlocks/i07b-jack-at-ride-height.ts'
import { singleUse } from './interlocks/i08-single-use.ts'
import { castleNutRule } from './interlocks/i09-castle-nut.ts'
import { antiRollLink } from './interlocks/i10-anti-roll-link.ts'
import { torsionBar } from './interlocks/i11-torsion-bar.ts'
import { airSpring } from './interlocks/i12-air-spring.ts'
import { strutNutHeatShock } from './interlocks/i13-strut-nut-heat-shock.ts'
import { wheelBearing } from './interlocks/i14-wheel-bearing.ts'
import { marks } from './interlocks/i15-marks.ts'
import { newPartCompared } from './interlocks/i16-new-part-compared.ts'
import { orderOfAngles } from './interlocks/i17-order-of-angles.ts'
import { brakesBeforeRolling } from './interlocks/i18-brakes-before-rolling.ts'
import { lamp } from './interlocks/i19-lamp.ts'
import { beforeRoadTest } from './interlocks/i20-before-road-test.ts'
import { redList } from './interlocks/i21-red-list.ts'
import { reTighten } from './interlocks/i22-re-tighten.ts'
import { steeringShaft } from './interlocks/i23-steering-shaft.ts'
import { firstTestDrive } from './interlocks/i24-first-test-drive.ts'
import type { Interlock } from './interlocks/moment.ts'
import type { RuleId } from './rule-id.ts'

/**
 * The rules that every order obeys, by name. Each looks at one action in one state and says nothing, or what would
 * happen and what to do instead.
 *
 * @source common practice, no source; docs/methods/plan.md
 */
export const interlocks: Readonly<Record<RuleId, Interlock>> = {
  I1: carried,
  I2: wheelNuts,
  I3: energyHeld,
  I4: energyBack,
  I5: taper,
  I6: hoseAndLead,
  I7: bondedBush,
  I7b: jackAtRideHeight,
  I8: singleUse,
  I9: castleNutRule,
  I10: antiRollLink,
  I11: torsionBar,
  I12: airSpring,
  I13: strutNutHeatShock,
  I14: wheelBearing,
  I15: marks,
  I16: newPartCompared,
  I17: orderOfAngles,
  I18: brakesBeforeRolling,
  I19: lamp,
  I20: beforeRoadTest,
  I21: redList,
  I22: reTighten,
  I23: steeringShaft,
  I24: firstTestDrive,
}
