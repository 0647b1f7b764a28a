import type { Look } from './look.ts'
import { neededPoints } from './needed-points.ts'

/** What the layout asks for: its points, the steered link, the shape of a twist beam, an axle that it fits. */
export function layoutRefers({ file, known, say, mustBe }: Look): void {
  const { layout, axle } = file
  if (layout === undefined) return
  for (const name of neededPoints(layout, axle, known.point)) {
    if (known.point.includes(name)) mustBe('point', name, ['points', name])
    else say(['points', name], 'It is missing.', `this point: a corner with the layout "${layout}" has it`)
  }
  if (layout === 'five-link' && axle === 'front' && file.steeredLink === undefined)
    say(['steeredLink'], 'It is missing.', 'the number of the link that the steering moves, 1 to 5')
  if (layout !== 'five-link' && file.steeredLink !== undefined)
    say(['steeredLink'], 'Only a five-link corner has numbered links.', 'nothing here')
  if ((layout === 'twist beam' || layout === 'semi-trailing arm') && axle === 'front')
    say(['axle'], `A front axle is steered, and a ${layout} is not.`, '"rear", or the layout that is true')
  if (layout === 'twist beam' && file.beamShape === undefined)
    say(
      ['beamShape'],
      'It is missing.',
      'a number: 0 where the arms turn by themselves, 1 for a thin open beam, or what was measured',
    )
  if (layout !== 'twist beam' && file.beamShape !== undefined)
    say(['beamShape'], 'Only a twist beam has a shape.', 'nothing here')
}
