import type { Look, SeenCorner } from './look.ts'

type Joint = NonNullable<NonNullable<SeenCorner['joints']>[string]>
type Part = NonNullable<NonNullable<SeenCorner['parts']>[string]>

/** Nuts that are kept by a pin. */
const pinned: readonly string[] = ['tapered stud, castle nut', 'axle nut', 'adjustable taper-roller hub']

const isSpring = (part: Part): boolean => part.kind === 'spring' || part.kind === 'strut'
const stores = (part: Part): string | undefined => ('stores' in part ? part.stores : undefined)
const carries = (part: Part): string | undefined => ('carries' in part ? part.carries : undefined)

/** Which part a joint of a kind has on one side at least, and what that is called. */
const asksFor: Readonly<Record<string, { readonly is: (part: Part) => boolean; readonly called: string }>> = {
  'adjustable taper-roller hub': { is: (part) => part.kind === 'hub', called: 'a hub' },
  'strut top nut': {
    is: (part) => part.kind === 'strut' || part.kind === 'damper',
    called: 'a strut or a damper, whose piston rod it holds',
  },
  'strut clamp': { is: (part) => part.kind === 'strut', called: 'a strut' },
  'anchor bolt': { is: (part) => stores(part) === 'torsion bar', called: 'a spring that is a torsion bar' },
  'hose bracket': { is: (part) => part.kind === 'hose' || part.kind === 'lead', called: 'a hose or a lead' },
  'hydraulic union': {
    is: (part) => part.kind === 'hose' && carries(part) !== 'air',
    called: 'a hose that carries brake or steering fluid',
  },
  'air union': {
    is: (part) => carries(part) === 'air' || stores(part) === 'air',
    called: 'a hose that carries air, or an air spring',
  },
  seat: { is: isSpring, called: 'a spring, whose load alone holds it' },
  'shackle bolt': {
    is: (part) => part.kind === 'shackle' || stores(part) === 'leaf',
    called: 'a shackle or a leaf spring',
  },
  'wheel nuts': { is: (part) => part.kind === 'wheel', called: 'a wheel' },
}

/** What the kind of a joint asks for: the parts it can join, and the members that only some kinds have. */
export function kindOfJointRefers({ file, say }: Look, id: string, joint: Joint): void {
  const at = ['joints', id]
  const { kind } = joint
  if (kind === undefined) return
  const parts = (joint.joins ?? []).map((name) => (name === undefined ? undefined : file.parts?.[name]))
  const asked = asksFor[kind]
  // A part that was told already may have been the right one.
  if (asked && parts.length === 2 && parts.every((part) => part?.kind !== undefined))
    if (!parts.some((part) => asked.is(part!)))
      say(
        [...at, 'kind'],
        `A joint of the kind “${kind}” joins ${asked.called}; this one joins ${joint.joins!.map((name) => `"${name}"`).join(' and ')}.`,
        'the kind that is true, or the parts that it joins',
      )
  if (joint.cracked !== undefined && kind !== 'axle nut')
    say(
      [...at, 'cracked'],
      `Where it is cracked is said of an axle nut; this is a joint of the kind “${kind}”.`,
      'nothing here, or the kind "axle nut"',
    )
  if (joint.reuse === 'new pin' && joint.pin === undefined && !pinned.includes(kind))
    say(
      [...at, 'reuse'],
      `A joint of the kind “${kind}” has no pin, and none is given.`,
      'its pin under "pin", or another word: "again", "inspect", "new"',
    )
  if (joint.slots !== undefined && joint.pin === undefined && !pinned.includes(kind))
    say(
      [...at, 'slots'],
      `Slots are for a pin; a joint of the kind “${kind}” has none.`,
      'its pin under "pin", or no slots',
    )
  if (kind === 'adjustable taper-roller hub' && joint.bush)
    say([...at, 'bush'], 'A taper-roller hub turns on bearings, not in a bush.', 'nothing here')
}
