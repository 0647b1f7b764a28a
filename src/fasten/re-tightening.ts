/** When wheels are tightened again, by one public text. @source definition */
export interface ReTightening {
  /** Driven distance from … to, m; null where the text goes by time only. */
  readonly distance: { readonly from: number; readonly to: number } | null
  /** Or standing time, s. */
  readonly time: number | null
  readonly words: string
  readonly source: string
}

const MILE = 1609.344
const MINUTE = 60

/**
 * What public texts say about tightening wheels again; they differ, and the maker's information stands above them.
 *
 * @source US Army TM 5-3820-256-24-3, p. 3-17; SOE/IRTE recommendation (2007); TMC RP 237 (as quoted); Tire Industry Association advice, tip 4; all read in public copies
 * @example reTightening.length // 4
 */
export const reTightening: readonly ReTightening[] = [
  {
    distance: { from: 50 * MILE, to: 50 * MILE },
    time: null,
    words: 'All nuts again to the stated torque.',
    source: 'US Army TM 5-3820-256-24-3, p. 3-17, para (6)',
  },
  {
    distance: { from: 25 * MILE, to: 50 * MILE },
    time: 30 * MINUTE,
    words: 'After standing or driving; tightened further, not slackened first.',
    source: 'Society of Operations Engineers / IRTE recommendation (2007)',
  },
  {
    distance: { from: 50 * MILE, to: 100 * MILE },
    time: null,
    words: 'And again at every 10 000 miles.',
    source: 'TMC RP 237, as quoted',
  },
  {
    distance: { from: 50 * MILE, to: 100 * MILE },
    time: null,
    words: 'Torque checked.',
    source: 'Tire Industry Association advice, tip 4',
  },
]
