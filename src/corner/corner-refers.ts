import { accessCircles } from './access-circles.ts'
import { adjusterRefers } from './adjuster-refers.ts'
import { holdRefers } from './hold-refers.ts'
import { jointRefers } from './joint-refers.ts'
import { layoutRefers } from './layout-refers.ts'
import { type Look, lookInto, type SeenCorner } from './look.ts'
import { partRefers } from './part-refers.ts'
import type { Problem } from './reading.ts'

/**
 * What is wrong between the members of a corner model: names that lead nowhere, points that the layout
 * lacks, parts that nothing holds, springs that nothing keeps in, joints that nobody can reach.
 *
 * @param file whatever is sound by itself
 * @source definition
 */
export function cornerRefers(file: SeenCorner | undefined): readonly Problem[] {
  if (!file) return []
  const look = lookInto(file)
  layoutRefers(look)
  partRefers(look)
  jointRefers(look)
  adjusterRefers(look)
  holdRefers(look)
  if (isWhole(file)) {
    accessCircles(look)
    checkUse(look)
  }
  return look.found
}

/** Whether nothing was taken out that could have used a name. */
const isWhole = (file: SeenCorner): boolean =>
  file.layout !== undefined &&
  [file.parts, file.joints, file.adjusters].every((list) => list && Object.values(list).every(Boolean))

function checkUse({ known, isUsed, say }: Look): void {
  for (const name of known.point)
    if (!isUsed('point', name))
      say(
        ['points', name],
        'Nothing uses this point.',
        'a joint, part or adjuster that names it; else leave it out',
      )
  for (const name of known.adjuster)
    if (!isUsed('adjuster', name))
      say(
        ['adjusters', name],
        'No joint names this adjuster.',
        'a joint with this adjuster, the one that is loosened to turn it',
      )
}
