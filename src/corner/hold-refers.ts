import { isWholeAxle } from './layouts.ts'
import type { Look, SeenCorner } from './look.ts'

type Hold = NonNullable<NonNullable<SeenCorner['holds']>[string]>

/** What stores energy in a way that can only be let down so. */
const letDownOf: Readonly<Record<string, readonly string[]>> = {
  'by its anchor bolt': ['torsion bar'],
  'air let out': ['air'],
  'in the compressor': ['coil'],
}
const standInOf: Readonly<Record<string, readonly string[]>> = {
  'torsion bar unwound': ['torsion bar'],
  'spring compressor': ['coil'],
}

/** Springs are kept in by joints that can keep them, and every spring is. */
export function holdRefers(look: Look): void {
  const { file, known, say, mustBe } = look
  for (const [id, hold] of Object.entries(file.holds ?? {})) {
    const part = file.parts?.[id]
    const stored = part && 'stores' in part ? part.stores : undefined
    if (!known.part.includes(id)) mustBe('part', id, ['holds', id])
    else if (part && !stored)
      say(['holds', id], `"${id}" stores no energy.`, 'a spring, or a strut with "stores"')
    if (!hold) continue
    hold.heldBy?.forEach((set, i) => {
      heldSet(look, ['holds', id, 'heldBy', i], set)
    })
    hold.droopStop?.forEach((joint, i) => {
      mustBe('joint', joint, ['holds', id, 'droopStop', i])
    })
    if (stored) ways(look, id, hold, stored)
  }
  for (const [id, part] of Object.entries(file.parts ?? {})) {
    // The gas in a damper is held by the damper's own body.
    const stored = part && part.kind !== 'damper' && 'stores' in part && part.stores
    if (stored && !Object.hasOwn(file.holds ?? {}, id))
      say(
        ['holds', id],
        `Nothing is said to hold "${id}", which stores energy.`,
        'the sets of joints that keep it in, under "heldBy"',
      )
  }
}

function heldSet(
  { file, say, mustBe }: Look,
  at: readonly PropertyKey[],
  set: readonly (string | undefined)[] | undefined,
): void {
  set?.forEach((joint, j) => {
    mustBe('joint', joint, [...at, j])
    if (joint !== undefined && set.indexOf(joint) < j)
      say([...at, j], `"${joint}" stands in this set twice.`, 'each joint once')
    if (joint !== undefined && file.joints?.[joint]?.kind === 'seat')
      say(
        [...at, j],
        `"${joint}" is a seat: the spring itself holds it, so it cannot hold the spring.`,
        'the joints that would have to open before the spring can get out',
      )
  })
}

function ways({ file, say }: Look, id: string, hold: Hold, stored: string): void {
  const only = hold.letDown === undefined ? undefined : letDownOf[hold.letDown]
  if (only && !only.includes(stored))
    say(
      ['holds', id, 'letDown'],
      `“${hold.letDown}” is for a spring that stores by ${only.join(' or ')}; "${id}" stores by ${stored}.`,
      'the way that fits this spring',
    )
  const anchored = Object.values(file.joints ?? {}).some((joint) => !joint || joint.kind === 'anchor bolt')
  if (hold.letDown === 'by its anchor bolt' && stored === 'torsion bar' && !anchored)
    say(
      ['holds', id, 'letDown'],
      'It is let down by its anchor bolt, and no joint is one.',
      'a joint of the kind "anchor bolt" that joins the bar',
    )
  hold.standInKinds?.forEach((way, i) => {
    const fits = way === undefined ? undefined : standInOf[way]
    const path = ['holds', id, 'standInKinds', i]
    if (fits && !fits.includes(stored))
      say(
        path,
        `“${way}” can stand in for ${fits.join(' or ')}; "${id}" stores by ${stored}.`,
        'what can hold this spring',
      )
    if (way === 'axle on stands' && file.layout && !isWholeAxle(file.layout))
      say(path, `The layout "${file.layout}" has no axle to stand on stands.`, 'what can hold this spring')
  })
}
