import type { Action } from './action.ts'
import { cautionWords as say } from './caution-words.ts'
import type { Rung } from './failure.ts'
import type { ThreePoint } from './three-point.ts'

/** One way to free what does not come undone. @source definition */
export interface RungFacts {
  /** For people: "penetrating oil and time". */
  readonly called: string
  /** Said of a joint: what is done with it. */
  readonly does: (called: string) => string
  readonly tool: string | null
  readonly minutes: ThreePoint
  /** How often it does not do. */
  readonly fails: number
  readonly cautions: readonly string[]
  readonly records: readonly string[]
  /** What it uses up. */
  readonly consumables: readonly string[]
  /** The fastener is lost by it. */
  readonly destroys: boolean
  readonly place?: Action['place']
}

const eyes = 'Goggles on, and nobody else in line: splinters fly.'
const watch =
  'Somebody stands by with an extinguisher, and looks again half an hour after the last flame or spark.'
const row = (
  called: string,
  does: RungFacts['does'],
  [tool, minutes, fails]: readonly [string | null, ThreePoint, number],
  more: Partial<RungFacts> = {},
): RungFacts => ({
  called,
  does,
  tool,
  minutes,
  fails,
  cautions: [],
  records: [],
  consumables: [],
  destroys: false,
  ...more,
})

/**
 * The ways, each with its tool, its minutes (low, usual, high), how often it fails, and what it costs.
 *
 * @source from memory; common practice, no source
 */
export const failureRungs: Readonly<Record<Rung, RungFacts>> = {
  soak: row(
    'penetrating oil and time',
    (joint) => `Oil the ${joint}, wait, work it to and fro, undo it`,
    [null, [15, 40, 180], 0.5],
    { cautions: [say.heat, 'Oil off the rubber again.'], consumables: ['penetrating oil'] },
  ),
  lever: row(
    'a lever that keeps its thread under pull',
    (joint) => `Lever under the fastener of the ${joint} so that its thread pulls, and turn`,
    ['lever', [3, 8, 20], 0.4],
    { cautions: ['It lets go at once: hands beside it.'], destroys: true },
  ),
  clamp: row(
    'holding its stud',
    (joint) =>
      `Hold the stud of the ${joint} at its end, or press its taper together with a clamp, and turn the nut`,
    ['clamp', [3, 8, 20], 0.35],
  ),
  grip: row(
    'a gripping socket',
    (joint) => `Turn the ${joint} with a gripping socket`,
    ['gripping socket', [3, 8, 20], 0.3],
    { cautions: [eyes], destroys: true },
  ),
  strap: row(
    'a strap in place of its nut',
    (joint) => `Put a strap round both parts of the ${joint}: its broken stud catches nothing`,
    ['strap', [2, 5, 10], 0.05],
    {
      cautions: ['The strap catches the parts when the taper lets go: look at it before you press.'],
      destroys: true,
    },
  ),
  press: row(
    'the separator left under load',
    (joint) => `Set the separator on the ${joint}, load it and let it stand; then a little more`,
    ['separator', [15, 30, 90], 0.4],
    { cautions: ['It lets go like a shot: nobody in line, a rag round separator and joint.'] },
  ),
  impact: row(
    'an impact wrench',
    (joint) => `Turn the ${joint} with the impact wrench, to and fro`,
    ['impact wrench', [3, 8, 20], 0.5],
    { cautions: [eyes, 'Never on a spring compressor.'] },
  ),
  puller: row(
    'a puller that draws the bolt',
    (joint) => `Draw the bolt of the ${joint} out with the puller`,
    ['puller', [10, 20, 45], 0.4],
    { cautions: [eyes, 'It lets go like a shot: nobody in line.'], destroys: true },
  ),
  extractor: row(
    'an extractor',
    (joint) => `Turn what is left of the ${joint} out with an extractor`,
    ['extractor', [10, 20, 60], 0.5],
    { cautions: [eyes], destroys: true },
  ),
  hammer: row(
    'a blow on the boss',
    (joint) => `Separator under load, then one hard blow on the side of the boss of the ${joint}`,
    ['hammer', [3, 8, 15], 0.3],
    { cautions: [eyes, say.shock] },
  ),
  fork: row(
    'a fork, which costs the boot',
    (joint) => `Drive a fork between the parts of the ${joint}: its boot is lost`,
    ['fork', [3, 6, 15], 0.15],
    { cautions: [eyes, 'The blow goes into the fork, never into the boss.'] },
  ),
  split: row(
    'splitting the nut',
    (joint) => `Split the nut of the ${joint}`,
    ['nut splitter', [5, 10, 25], 0.2],
    { cautions: [eyes], destroys: true },
  ),
  heat: row(
    'heat, on scrap only',
    (joint) => `Heat the ${joint} and undo it while it is hot: both its parts go to scrap`,
    ['blow torch', [10, 20, 40], 0.2],
    {
      cautions: [say.heat, watch, 'Hot parts look like cold ones: mark them, and let them cool.'],
      records: ['who watches for fire, until when', 'heated parts marked as scrap'],
      destroys: true,
    },
  ),
  drill: row(
    'drilling it out',
    (joint) => `Drill out what is left of the ${joint}, in steps, in the middle`,
    ['drill', [20, 40, 90], 0.2],
    { cautions: [eyes], consumables: ['drill bits'], destroys: true },
  ),
  cut: row(
    'the saw',
    (joint) => `Saw through the ${joint}, and take its pieces out`,
    ['saw', [15, 30, 75], 0.05],
    {
      cautions: [
        eyes,
        watch,
        'Hose, lead and boot covered and out of the way of the blade; never a gas damper.',
      ],
      records: ['who watches for fire, until when'],
      consumables: ['saw blades'],
      destroys: true,
    },
  ),
}

/** From gentle to rough. @source common practice, no source */
export const rungOrder = Object.keys(failureRungs) as readonly Rung[]
