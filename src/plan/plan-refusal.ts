/** Why the plan room says no. @source definition */
export type PlanRefusal =
  | 'no-such-part'
  | 'no-such-joint'
  | 'nothing-to-do'
  | 'two-of-one-axle'
  | 'no-way'
  | 'too-many-ways'
  | 'circle'
  | 'contradiction'
  | 'no-such-failure'
  | 'no-way-left'
  | 'part-missing'
