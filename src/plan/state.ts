/** How far a joint is undone, or done again. @source definition */
export type JointIs = 'closed' | 'cracked' | 'retained' | 'open' | 'started' | 'run up' | 'final' | 'checked'

/** Where a part is: freed moves with another, off is off the vehicle, new is a new one fitted. @source definition */
export type PartIs = 'fitted' | 'freed' | 'hung' | 'off' | 'new'

/** What carries an axle. @source definition */
export type SupportIs =
  | 'on its wheels'
  | 'wheels on ramps or over the pit'
  | 'on slip plates'
  | 'on a jack'
  | 'on stands'
  | 'on stands, seen loaded'
  | 'on the lift'
  | 'on the lift, arms locked'

/**
 * The state of an assembly: plain words by key. A key that is absent has the value it has on a sound vehicle that
 * stands on its wheels (`factOf`). The keys are made by `keys`; docs/methods/plan.md lists their values.
 *
 * @source definition
 */
export type State = Readonly<Record<string, string>>
