import type { BoltLine } from '../job/index.ts'

/** Kinds whose name in a corner model is not how a person would say it. */
const said: Readonly<Record<string, string>> = {
  'tapered stud, castle nut': 'castle nut on a tapered stud',
  'tapered stud, lock nut': 'lock nut on a tapered stud',
  'thread and lock nut': 'lock nut on its thread',
  'slotted bolt': 'bolt in a slot',
  'adjustable taper-roller hub': 'hub nut that sets its bearings',
  'strut top nut': 'nut of the strut’s piston rod',
  'anchor bolt': 'anchor bolt of the torsion bar',
  seat: 'held by its load alone',
}

/** "castle nut on a tapered stud" */
export const kindWords = (kind: BoltLine['kind']): string => said[kind] ?? kind

/** Where the torque is received: "at the nut", "at the bolt". */
export const atFastener = (kind: BoltLine['kind']): string =>
  /nut|hub/.test(kind) && !/bolt/.test(kind) ? 'at the nut' : 'at the bolt'
