import { metre, type NewtonMetre, rad } from '../quantity/index.ts'
import type { Adapter, TorqueWrench } from './torque-wrench.ts'
import { wrenchSetting } from './wrench-setting.ts'

/** The setting for a torque, with or without an adapter, unrounded. */
export const settingOn = (wrench: TorqueWrench, adapter: Adapter | null, torque: NewtonMetre): NewtonMetre =>
  wrenchSetting({
    torque,
    reach: wrench.reach,
    offset: adapter?.offset ?? metre(0),
    angle: adapter?.angle ?? rad(0),
  })
