import type { Addition } from './addition.ts'
import type { Choice } from './choice.ts'

/**
 * A choice with one alternative added, and why: what was to be opened on the bench may have to be opened on the vehicle.
 *
 * @source definition
 */
export function choiceWith(choice: Choice, addition: Addition): Choice {
  const { open = [], bench = [], off = [], standIn, letDown, raised } = addition
  const ids = [
    ...open,
    ...bench,
    ...off,
    ...(standIn ? [`hold ${standIn[0]}`] : []),
    ...(letDown ? [`let down ${letDown}`] : []),
    ...(raised ? [`raised ${raised}`] : []),
  ]
  const fresh = ids.filter((id) => choice.why[id] === undefined)
  return {
    open: new Set([...choice.open, ...open]),
    bench: new Set([...choice.bench, ...bench].filter((id) => !open.includes(id))),
    off: new Set([...choice.off, ...off]),
    standIns: standIn ? { ...choice.standIns, [standIn[0]]: standIn[1] } : choice.standIns,
    letDown: letDown ? new Set([...choice.letDown, letDown]) : choice.letDown,
    raised: raised ? new Set([...choice.raised, raised]) : choice.raised,
    why: { ...choice.why, ...Object.fromEntries(fresh.map((id) => [id, addition.why])) },
  }
}
