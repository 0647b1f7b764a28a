import { type Joint, type JointState, nextAct, openJoint } from '../fasten/index.ts'
import type { BoltLine } from '../job/index.ts'

/**
 * How far a joint is, as the fasten room says it, out of its line of the bolt book: what the book does not let count
 * has not been done.
 *
 * @returns null where a final breaks a rule that only undoing it and beginning anew puts right
 * @source own derivation: docs/methods/bolt-book.md
 */
export function jointStage(line: BoltLine, joint: Joint): JointState | null {
  const { record, toDo, required, state } = line
  const fastener = record.fastener === 'used again' ? 'used' : (record.fastener ?? 'unknown')
  const at = (stage: JointState['stage'], made = 0): JointState => ({ ...openJoint, stage, made, fastener })
  const { kind } = joint.procedure
  if (record.final) {
    const mends = toDo.filter(({ holdsAt }) => holdsAt === 'run up').map(({ mend }) => mend)
    if (mends.includes('begin anew')) return null
    if (mends.includes('tighten')) return at('run up')
    if (mends.includes('pin') && kind === 'castle slot') return at('in slot', 2)
    if (mends.includes('pin') && kind === 'seat and back off') return at('float read', 2)
    return at('final', 1)
  }
  const told = new Set(record.stages.map((fact) => (fact.stage === 'stage' ? fact.number : 0)))
  let made = 0
  while (told.has(made + 1)) made++
  const begun = record.runUp ?? record.moved ?? record.stages.at(-1) ?? null
  if (!begun && state !== 'cracked') return at('open')
  // A fastener for one use is new before it is pulled.
  if (required.fastener === 'new' && record.fastener !== 'new' && made === 0) return at('open')
  if (kind === 'castle slot') return made > 0 ? at('at floor', 1) : at('run up')
  if (kind === 'seat and back off')
    return at((['run up', 'seated', 'backed off', 'brought up'] as const)[made] ?? 'brought up', made)
  return made > 0 ? at('part made', made) : at('run up')
}

/** The act that comes next; undoing where the record must be begun anew; null when nothing is left to do with a tool. */
export function actOf(line: BoltLine, joint: Joint): ReturnType<typeof nextAct> {
  const stage = jointStage(line, joint)
  return stage === null ? 'undo' : nextAct(joint, stage)
}
