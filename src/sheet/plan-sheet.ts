/** A rule that an order breaks at a line: what would happen, what to do instead. @source definition */
export interface PlanBroken {
  /** "I3" */
  readonly rule: string
  readonly sentence: string
  readonly instead: string
}

/** One line of the plan: one action. @source definition */
export interface PlanSheetLine {
  /** The action's id: a hand-made order is a list of these. */
  readonly id: string
  /** "Crack the lower front pivot bolt, right" */
  readonly words: string
  /** Its letter on the drawing; null where it has none. */
  readonly letter: string | null
  /** "front left"; null for what belongs to no wheel. */
  readonly wheel: string | null
  /** The joint that it is about, as the log names it, and what can go wrong there; null where it is about none. */
  readonly at: { readonly joint: string; readonly wheel: string; readonly fails: readonly string[] } | null
  /** "24 mm spanner"; empty when the hands do. */
  readonly tool: string
  /** "180 N·m to 200 N·m, dry, at ride height": from the workshop's sheet; empty where no value belongs to it. */
  readonly value: string
  /** "under", "at the wheel" */
  readonly place: string
  /** "4 min" */
  readonly minutes: string
  readonly cautions: readonly string[]
  /** What must be written down with it. */
  readonly records: readonly string[]
  /** Why it stands in the plan. */
  readonly why: string
  readonly waitsFor: readonly { readonly id: string; readonly words: string; readonly why: string }[]
  readonly waitedForBy: readonly { readonly id: string; readonly words: string }[]
  /** What is wrong with it in this place; empty in a plan of our own. */
  readonly broken: readonly PlanBroken[]
}

/** The plan of a job as one plain value: what terminal, page and paper show. @source definition */
export interface PlanSheet {
  /** Which vehicle, which job, whose values. */
  readonly title: {
    readonly vehicle: string
    readonly job: string
    readonly workshop: string
    readonly source: string
  }
  /** What is to be replaced or opened, in words: "right lower arm". */
  readonly goal: readonly string[]
  /** What could be chosen to be replaced, by the corner models. */
  readonly choices: readonly {
    readonly id: string
    readonly words: string
    readonly wheel: string
    readonly chosen: boolean
  }[]
  /** Stations as bands: where the vehicle is and how it is held. */
  readonly bands: readonly { readonly station: string; readonly lines: readonly PlanSheetLine[] }[]
  /** "61 actions, 4 stations" */
  readonly size: string
  /** "12 actions are done by the record, 41 are left"; empty for a plan from the sound vehicle. */
  readonly done: string
  /** "half of such jobs take less than 3 h 50 min, nine of ten less than 5 h 20 min" */
  readonly time: string
  /** "Proven: no order of these actions has less walking about." or the gap in words. */
  readonly proof: string
  /** Against our own best order, for a hand-made one: "12 min more than the best order"; empty otherwise. */
  readonly against: string
  /** How many lines break a rule. */
  readonly brokenLines: number
  readonly shopping: readonly { readonly heading: string; readonly items: readonly string[] }[]
  /** What the kit lacks, and what to borrow. */
  readonly missing: readonly string[]
  /** What the work obliges to afterwards. */
  readonly consequences: readonly { readonly words: string; readonly because: string }[]
  /** What failed, and what the plan does about it. */
  readonly branches: readonly { readonly words: string; readonly because: string }[]
  /** Ways that nearly won, with what they would cost more. */
  readonly alternatives: readonly string[]
  readonly cautions: readonly string[]
  readonly troubles: readonly string[]
}
