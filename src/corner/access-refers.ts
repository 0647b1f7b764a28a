import type { Look, SeenCorner } from './look.ts'

type Joint = NonNullable<NonNullable<SeenCorner['joints']>[string]>
const conditions = ['partOff', 'jointOpen', 'steering', 'station', 'arm'] as const

/** How a joint is reached: one condition in each entry, and none that needs the joint itself. */
export function accessRefers({ file, known, say, mustBe }: Look, id: string, joint: Joint): void {
  joint.access?.forEach((way, i) => {
    const at = ['joints', id, 'access', i]
    if (!way) return
    mustBe('part', way.partOff, [...at, 'partOff'])
    mustBe('joint', way.jointOpen, [...at, 'jointOpen'])
    const named = conditions.filter((name) => way[name] !== undefined)
    // A condition that was told already is absent here, but its name still stands.
    if (named.length !== 1 && !conditions.some((name) => Object.hasOwn(way, name) && way[name] === undefined))
      say(
        at,
        named.length === 0
          ? 'It names no condition.'
          : `It names ${named.length} conditions: ${named.map((name) => `"${name}"`).join(', ')}.`,
        `one of ${conditions.map((name) => `"${name}"`).join(', ')}; a second one gets an entry of its own`,
      )
    if (way.jointOpen === id) say([...at, 'jointOpen'], 'The joint waits for itself.', 'another joint')
    if (way.partOff !== undefined && joint.joins?.includes(way.partOff))
      say(
        [...at, 'partOff'],
        `This joint itself holds "${way.partOff}" on, so that cannot be off before it is reached.`,
        'a part that other joints hold, or no such condition',
      )
    const steered = file.axle !== 'rear' || known.point.includes('kingpin-lower')
    if (way.steering !== undefined && !steered)
      say([...at, 'steering'], 'This rear axle is not steered.', 'no such condition')
  })
}
