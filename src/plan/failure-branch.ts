import type { Assembly, JointNode } from './assembly.ts'
import type { Failure, Rung } from './failure.ts'
import { failureLadder } from './failure-ladder.ts'
import { failureParts } from './failure-parts.ts'
import { jointHabits } from './joint-habits.ts'
import { jointsOf } from './joints-of.ts'

/** What a failure makes of a plan. @source own derivation: docs/methods/plan.md */
export interface Branch {
  readonly failure: Failure
  readonly joint: JointNode | null
  /** How the joint is undone now, and the way after that; null where it opens as usual, or nothing rougher is left. */
  readonly rung: Rung | null
  readonly next: Rung | null
  /** Which of the undoing actions it changes. */
  readonly at: 'crack' | 'free' | 'open'
  /** Parts that come new, and parts that come off only to be mended on the bench. */
  readonly replaced: readonly string[]
  readonly off: readonly string[]
  /** Its fastener comes new. */
  readonly fastener: boolean
  /** What is mended before the joint is closed, and the part that it belongs to. */
  readonly mended: { readonly what: 'bush' | 'wheel stud'; readonly part: string } | null
  /** What is looked at before the joint is closed: the work stops where it is bad. */
  readonly look: string | null
}

/**
 * What one failure makes of a plan: how the joint is undone, what is lost by it and comes new, what is mended and
 * looked at before it is closed.
 *
 * @param renewed parts that come new already
 * @source common practice, no source
 */
export function branchOf(assembly: Assembly, failure: Failure, renewed: ReadonlySet<string>): Branch {
  const joint = assembly.joints[failure.joint ?? ''] ?? null
  const [rung = null, next = null] = failureLadder(assembly, failure, renewed)
  const base: Branch = {
    failure,
    joint,
    rung,
    next,
    at: joint ? placeOf(failure, joint) : 'open',
    replaced: failure.part !== undefined && failure.what !== 'wrong part in the box' ? [failure.part] : [],
    off: [],
    fastener: false,
    mended: null,
    look: null,
  }
  if (!joint) return failure.what === 'split boot' ? { ...base, replaced: bootOf(assembly, failure) } : base
  return { ...base, ...lost(assembly, failure, joint, rung) }
}

/** A nut on a taper is dealt with as it goes back to a few threads, the taper as it is parted. */
function placeOf({ what }: Failure, { kind }: JointNode): Branch['at'] {
  const { taper, cracked } = jointHabits[kind]
  if (what === 'taper will not part') return 'free'
  if (taper) return 'crack'
  return cracked && what === 'rounded head' ? 'crack' : 'open'
}

function bootOf({ parts, ...rest }: Assembly, { part }: Failure): readonly string[] {
  const boot = jointsOf({ ...rest }, part!)
    .flatMap(({ joins }) => joins)
    .find((id) => parts[id]!.kind === 'boot')
  return parts[part!]!.kind === 'boot' ? [part!] : [boot ?? part!]
}

function lost(assembly: Assembly, failure: Failure, joint: JointNode, rung: Rung | null): Partial<Branch> {
  // The saw goes between bush and bracket, whatever it was for.
  if (rung === 'cut' && joint.file.bush?.bonded && !jointHabits[joint.kind].taper)
    return { ...sleeve(assembly, joint, rung), look: seatOf(joint) }
  const { taper } = jointHabits[joint.kind]
  const stud = failureParts.withStud(assembly, joint).id
  const given = failure.part === undefined ? [] : [failure.part]
  const seat = seatOf(joint)
  switch (failure.what) {
    case 'seized sleeve':
      return sleeve(assembly, joint, rung)
    case 'snapped stud':
      if (joint.kind === 'wheel nuts') return wheelStud(assembly, joint)
      return taper || joint.kind === 'stud nuts'
        ? { replaced: [stud], fastener: true, look: seat }
        : { fastener: true, look: seat }
    case 'stripped thread':
      if (joint.kind === 'wheel nuts') return wheelStud(assembly, joint)
      return { replaced: [...given, ...threadedParts(assembly, joint)], fastener: true, look: seat }
    case 'rounded head':
      return rung === 'cut' && taper
        ? { replaced: [stud], fastener: true, look: seat }
        : joint.kind === 'wheel nuts' && rung === 'cut'
          ? wheelStud(assembly, joint)
          : { fastener: true }
    case 'taper will not part':
      return rung === 'fork' || rung === 'cut' || rung === 'heat'
        ? { replaced: [stud], fastener: true, look: seat }
        : { look: seat }
    case 'stud spins':
      return rung === 'cut'
        ? { replaced: [stud], fastener: true, look: seat }
        : { fastener: true, look: seat }
    case 'split boot':
      return {
        replaced: [...given, ...(given.length > 0 ? [] : [failureParts.withBoot(assembly, joint).id])],
      }
    case 'hole not round':
      return {
        replaced: given.length > 0 ? given : [failureParts.withHole(assembly, joint).id],
        fastener: true,
        look: seat,
      }
    case 'damage found':
      return { fastener: true, look: seat }
    default:
      return {}
  }
}

const seatOf = ({ kind, called }: JointNode) =>
  `hole and ${jointHabits[kind].taper ? 'taper' : 'thread'} of the ${called}: round, clean, not drawn, not cracked`

/** A bolt that was stuck is not used again; sawn out it takes its bush with it. */
function sleeve(assembly: Assembly, joint: JointNode, rung: Rung | null): Partial<Branch> {
  if (joint.kind === 'thread and lock nut')
    return rung === 'soak'
      ? { look: `thread of the ${joint.called}` }
      : { replaced: joint.joins.filter((id) => assembly.parts[id]!.kind !== 'body'), fastener: true }
  const bush = failureParts.withBush(assembly, joint).id
  if (rung !== 'cut')
    return {
      fastener: true,
      look: `rubber and sleeve of the bush of the ${joint.called}: not torn, not turned in its eye`,
    }
  return { fastener: true, off: [bush], mended: { what: 'bush', part: bush } }
}

/** A wheel stud is drawn into the hub from behind: wheel and disc are off. */
function wheelStud(assembly: Assembly, joint: JointNode): Partial<Branch> {
  const hub = failureParts.joinedBy(assembly, joint).find(({ kind }) => kind !== 'wheel')!
  const discs = jointsOf(assembly, hub.id)
    .flatMap(({ joins }) => joins)
    .filter((id) => assembly.parts[id]!.kind === 'disc')
  return {
    fastener: true,
    off: discs,
    mended: { what: 'wheel stud', part: hub.id },
    look: `flange of the ${hub.called} where the stud sat`,
  }
}

/** Threads that are cut into a part go with it; a bolt and its nut do not. */
function threadedParts(assembly: Assembly, joint: JointNode): readonly string[] {
  const own: readonly JointNode['kind'][] = [
    'tapered stud, castle nut',
    'tapered stud, lock nut',
    'stud nuts',
    'strut top nut',
    'axle nut',
    'adjustable taper-roller hub',
    'hydraulic union',
    'air union',
  ]
  if (joint.kind === 'thread and lock nut')
    return joint.joins.filter((id) => !['body', 'rack'].includes(assembly.parts[id]!.kind))
  return own.includes(joint.kind) ? [failureParts.withStud(assembly, joint).id] : []
}
