import type { Corner } from '../corner/index.ts'
import type { RankedSuspect } from '../findings/index.ts'
import { normal } from '../measure/index.ts'
import type { UnitChoice } from '../quantity/index.ts'
import { sheetNumber } from './sheet-number.ts'

type Suspect = RankedSuspect['suspect']

/** "right front"; "front" for what the axle has once. */
export const placeOf = ({ axle, side }: Pick<Suspect, 'axle' | 'side'>): string =>
  [side, axle].filter((one) => one !== null).join(' ')

/** What may be wrong, and by how much the readings have it, in the words of the workshop. Not yet a sentence. */
export function suspectWords(
  { suspect, size, moved }: Pick<RankedSuspect, 'suspect' | 'size'> & { readonly moved: string },
  corner: Corner | null,
  units: UnitChoice,
): string {
  const { kind, at } = suspect
  const place = placeOf(suspect)
  const on = (what: string) => `${place} ${what}`.trim()
  const kindOf =
    size.unit === 'm'
      ? ({ kind: 'length', unit: units.length } as const)
      : ({ kind: 'angle', unit: units.angle } as const)
  const number = sheetNumber({ ...normal(size.spread, 'size'), value: Math.abs(size.value) }, kindOf)
  const by = `${number.text} ${number.spread}`
  const away = `by ${by}${moved}`
  const named = nameOf(at, corner)
  switch (kind) {
    case 'out of adjustment':
      return 'no part at fault, only out of adjustment'
    case 'bent lower arm':
    case 'bent upper arm':
      return `${on(kind.replace('bent ', ''))} bent, its outer end off ${away}`
    case 'bent link':
      return `${on(named)} bent, shorter ${away}`
    case 'bent knuckle':
      return `${on('knuckle')} bent, the wheel off its joints ${away}`
    case 'bent strut tube':
      return `${on('strut')} bent ${away}`
    case 'bent steering arm or tie rod':
      return `${on('steering arm or tie rod')} bent ${away}`
    case 'bent axle or beam':
      return `${on('end of the axle beam')} bent ${away}`
    case 'shifted tower':
      return `${on('strut tower')} shifted ${away}`
    case 'cross-member shifted sideways':
    case 'cross-member shifted up or down':
    case 'cross-member turned':
      return `${on('cross-member')} ${kind.replace('cross-member ', '')} ${away}`
    case 'sagged spring':
      return `${on('spring')} sagged ${away}`
    case 'collapsed bush':
      return `bush of the ${on(named)} collapsed ${away}`
    case 'worn ball joint':
      return `${on(named)} worn, standing off ${away}`
    case 'worn kingpin':
      return `${on('kingpin')} worn, the wheel leaning ${away}`
    case 'loose wheel bearing':
      return `${on('wheel bearing')} loose, the wheel leaning ${away}`
    case 'bush clamped hanging':
      return `${on('bush')} clamped while the wheel hung, which holds the body up ${away}`
    case 'eccentric fitted the wrong way round':
      return `${on(named)} fitted the wrong way round`
    case 'adjuster slipped or at its stop':
      return `${on(named)} slipped, or at its stop`
    case 'wrong part':
      return `${on(named)} the wrong one`
    case 'rack off centre':
      return `steering rack off its centre ${away}`
    case 'axle shifted':
    case 'axle turned':
      return `${on('axle')} ${kind.replace('axle ', '')} ${away}`
    case 'tyre pulls':
      return `a ${on('tyre')} that pulls`
    case 'gauge not zeroed':
      return `${at ?? 'gauge'} not zeroed, off ${away}`
    case 'floor not level':
      return `floor not level ${away}`
  }
}

function nameOf(at: string | null, corner: Corner | null): string {
  if (at === null) return 'part'
  const known = corner?.joints[at]?.name ?? corner?.parts[at]?.name
  return known ?? at.replaceAll('-', ' ')
}

/** How a hand proves a suspect; empty where only another reading does. @source common practice, no source */
export function proofOf({ kind }: Suspect, corner: Corner | null): string {
  const strut = corner?.layout.includes('strut') ?? false
  switch (kind) {
    case 'bent knuckle':
    case 'bent strut tube':
      return strut
        ? 'Strut or knuckle: a straight edge along tube and rod, and the gap from tyre to tube, against the other side; then the knuckle, from the flange to each hole. Never loosen the rod’s nut for it: it holds the spring.'
        : 'Measure the knuckle against the other side: from the flange to each taper.'
    case 'bent lower arm':
    case 'bent upper arm':
    case 'bent link':
    case 'bent steering arm or tie rod':
    case 'wrong part':
      return 'Measure it against the other side, from hole to hole; compare the numbers cast or stamped on both.'
    case 'collapsed bush':
      return 'Lever at the bush; measure from its bolt to the ball joint against the other side.'
    case 'worn ball joint':
      return 'Play at the joint with a dial, the joint unloaded.'
    case 'worn kingpin':
    case 'loose wheel bearing':
      return 'Rock at 12 and 6, then with the brake held: the play of a bearing goes away, that of a kingpin stays.'
    case 'bent axle or beam':
      return 'Camber of both wheels, and a straight edge or string along the beam between the spring seats.'
    case 'shifted tower':
    case 'cross-member shifted sideways':
    case 'cross-member shifted up or down':
    case 'cross-member turned':
    case 'axle shifted':
    case 'axle turned':
      return 'Measure diagonals from holes in the body that the maker names; look for shifted witness marks at the mounting bolts.'
    case 'sagged spring':
    case 'bush clamped hanging':
      return 'Look for a broken leaf or coil. Loosen the bush bolts on its wheels and roll it: a height that comes back was a bush; one that stays is the spring.'
    case 'gauge not zeroed':
      return 'Zero the gauge on its own surface, turn it end for end, read again.'
    case 'floor not level':
      return 'Check the pads with a water level, or read again turned end for end in the bay.'
    case 'tyre pulls':
      return 'Swap the front wheels from side to side: the pull of a tyre changes sides.'
    default:
      return ''
  }
}
