import type { Addition } from './addition.ts'
import type { Assembly } from './assembly.ts'
import type { Choice } from './choice.ts'
import { springsBeside } from './springs-beside.ts'

/**
 * A spring beside a joint that is sawn through is let down before: what a choice still lacks for that.
 *
 * @param cut joints that are sawn through
 * @source common practice, no source
 */
export function* sawNeeds(
  assembly: Assembly,
  cut: readonly string[],
  choice: Choice,
): Generator<readonly Addition[], void> {
  for (const id of cut) {
    const joint = assembly.joints[id]!
    if (choice.bench.has(id)) continue
    for (const { hold, letDownBy } of springsBeside(assembly, joint)) {
      const standIn = choice.standIns[hold.id]
      const why = `the saw comes near it at the ${joint.called}`
      if (!standIn) yield letDownBy.map((kind) => ({ standIn: [hold.id, kind], why }))
      else if (!letDownBy.includes(standIn)) yield []
      else if (!choice.letDown.has(hold.id)) yield [{ letDown: hold.id, why }]
    }
  }
}
