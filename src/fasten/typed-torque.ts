import { exact } from '../measure/index.ts'
import { formatForce, formatTorque, type NewtonMetre, newton, type TorqueUnit } from '../quantity/index.ts'
import { fastenRefusal, positive } from './fasten-refusal.ts'
import { type PreloadJob, preloadOf } from './preload.ts'
import { threadLoads } from './thread-loads.ts'

/** A value as somebody typed it, held against the thread. @source definition */
export interface TypedTorque extends PreloadJob {
  readonly torque: NewtonMetre
  /** Class or grade on the head; null when there is no mark: anything from 8.8 to 12.9, grade 5 to 8. */
  readonly strength: string | null
  /** Unit the person typed it in. */
  readonly unit?: TorqueUnit | undefined
}

/** What a typed value would do to its thread. @source definition */
export interface TypedTorqueCheck {
  readonly verdict: 'plausible' | 'far too low' | 'may pass proof'
  /** Share of the proof load: all friction at its highest, in the middle, and at its lowest. */
  readonly share: { readonly low: number; readonly middle: number; readonly high: number }
  readonly sentence: string
}

/** Below this share of the proof load, even on the slipperiest thread, hardly anything is clamped; own choice. */
const FAR_TOO_LOW = 0.25
const UNMARKED = { metric: ['8.8', '12.9'], unified: ['grade 5', 'grade 8'] } as const

/**
 * What a typed value would do to this thread, as shares of its proof load. It judges, it never offers another value.
 *
 * @returns a warning when it is far too low, or may pass the proof load at middling friction
 * @throws {Refusal} `above-proof` when even the stickiest thread would be pulled past its proof load; `unknown-strength`, `not-positive`, `not-finite`, `bad-range`
 * @assumes a thread without prevailing torque; torque only, no angle after it
 * @source ISO 898-1:2013 and SAE J429 (proof loads); own derivation: docs/methods/preload.md
 * @example checkTypedTorque({ torque: Nm(110), thread: parseThread('M14x1.5'), strength: '10.9' }).verdict // 'plausible'
 * @example checkTypedTorque({ torque: Nm(190), thread: parseThread('M6'), strength: '8.8' }) // refused: above-proof
 */
export function checkTypedTorque({ torque, strength, unit = 'N·m', ...job }: TypedTorque): TypedTorqueCheck {
  const { low, high, preload } = preloadOf(exact(positive(torque, 'torque')), job)
  const marks = strength === null ? UNMARKED[job.thread.system] : ([strength, strength] as const)
  const weak = threadLoads(job.thread, marks[0]).proof
  const strong = threadLoads(job.thread, marks[1]).proof
  const share = { low: low / strong, middle: preload.value / ((weak + strong) / 2), high: high / weak }
  const what =
    `${formatTorque(torque, { unit, digits: digitsFor(torque) })} on ${job.thread.designation}, ${strength === null ? `no mark, taken as ${marks.join(' to ')}` : `class ${strength}`}`
      .replace('class grade', 'grade')
      .replace(/class (class|SAE)/i, '$1')
  const load = `${kN(low)} to ${kN(high)} by friction, ${percent(share.low)} to ${percent(share.high)} of its proof load`
  if (share.low > 1)
    throw fastenRefusal({
      code: 'above-proof',
      at: 'torque',
      given: formatTorque(torque, { unit, digits: digitsFor(torque) }),
      sentence: `${what}, would pull ${load}: even the stickiest thread would be stretched for good.`,
      remedy: 'Read value, unit and thread again in your service information.',
    })
  const verdict = share.middle > 1 ? 'may pass proof' : share.high < FAR_TOO_LOW ? 'far too low' : 'plausible'
  const end = {
    plausible: 'Nothing speaks against it; that it is the right value only your service information says.',
    'far too low':
      'That clamps hardly anything: read value, unit and thread again in your service information.',
    'may pass proof':
      'At middling friction it passes the proof load: read value, thread, class and thread condition again.',
  }[verdict]
  return { verdict, share, sentence: `${what}, pulls ${load}. ${end}` }
}

const kN = (force: number) => formatForce(newton(force), { unit: 'kN', digits: 1 })
const percent = (share: number) => `${Math.round(share * 100)} %`
/** As many decimals as a torque of this size is typed with. */
const digitsFor = (torque: number) => (torque < 10 ? 1 : 0)
