import type { JointNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { jointHabits } from './joint-habits.ts'
import { seizedRisk } from './seized-risk.ts'
import type { Work } from './work.ts'

function marks({ file }: JointNode): readonly string[] {
  if (file.marks) return file.marks
  if (file.kind === 'thread and lock nut') return ['exposed thread', 'length between the joint centres']
  return ['clock position of head and washer', 'which way round', 'front or rear']
}

/** A joint that is called a nut is not told as the nut of one. */
const nut = (called: string) => (/\bnut\b/.test(called) ? `the ${called}` : `the nut of the ${called}`)

function open({ kind, called }: JointNode): string {
  switch (kind) {
    case 'clip':
    case 'hose bracket':
      return `Free the ${called}`
    case 'plug':
      return `Unplug the ${called}`
    case 'seat':
      return `See that the ${called} carries nothing`
    case 'tapered stud, castle nut':
    case 'tapered stud, lock nut':
      return `Take ${nut(called)} off`
    case 'spline':
    case 'press fit':
      return `Part the ${called}`
    case 'wheel nuts':
      return `Take the ${called} off`
    default:
      return `Undo the ${called}`
  }
}

function cautions(work: Work, joint: JointNode): readonly string[] {
  const kinds = joint.joins.map((part) => work.assembly.parts[part])
  const gas = kinds.some((part) => part && 'stores' in part.file && part.file.stores === 'gas')
  return [
    ...(gas ? [say.gas] : []),
    ...(kinds.some((part) => part?.kind === 'lead') ? [say.lead] : []),
    ...(joint.kind === 'hydraulic union' ? [say.fluid] : []),
    ...(joint.kind === 'strut top nut' ? [say.compressor] : []),
    ...(kinds.some((part) => part?.kind === 'caliper') ? [say.hose, say.dust] : []),
    ...(joint.kind === 'U-bolts' || joint.kind === 'shackle bolt' ? [say.leaf] : []),
    ...(isLikelySeized(joint) ? [say.heat] : []),
    ...(kinds.some((part) => part?.kind === 'steering shaft') ? [say.shaft, say.airbag] : []),
  ]
}

/** From this chance on a joint is likely to be seized. @source own choice */
const likely = 0.1

/** Said at every bolt nobody reads it: only where somebody will want to spray or heat. */
function isLikelySeized(joint: JointNode): boolean {
  const seized = seizedRisk(joint)
  return seized !== null && !jointHabits[joint.kind].taper && seized.chance >= likely
}

/**
 * How the undoing of a joint is said: marks, sentences, cautions.
 *
 * @source common practice, no source
 */
export const undoingWords = { marks, open, cautions, nut } as const
