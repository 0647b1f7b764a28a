import type { Corner } from '../../../src/corner/index.ts'

/**
 * What the linkage room calls a point of a file. Written out here anew, from the corner models and the linkage's own
 * names, so that the generator does not lean on how the judged code finds them.
 */
export function fileNamesOf(family: string, corner: Corner): Readonly<Record<string, string>> {
  if (family === 'five-link') {
    const names: Record<string, string> = {}
    for (let i = 1; i <= 5; i++) {
      names[`link-${i}-inner`] = `inner${i - 1}`
      names[`link-${i}-outer`] = `outer${i - 1}`
    }
    return names
  }
  if (family === 'semi-trailing arm')
    return { 'arm-front-pivot': 'innerFront', 'arm-rear-pivot': 'innerRear' }
  const names: Record<string, string> = {
    'lower-front-pivot': 'lowerFrontInner',
    'lower-rear-pivot': 'lowerRearInner',
    'lower-outer': 'lowerOuter',
    'tie-inner': 'tieInner',
    'tie-outer': 'tieOuter',
  }
  if (family === 'strut') return { ...names, 'strut-top': 'topMount', 'strut-lower': 'strutLower' }
  return corner.points['upper-outer']
    ? {
        ...names,
        'upper-front-pivot': 'upperFrontInner',
        'upper-rear-pivot': 'upperRearInner',
        'upper-outer': 'upperOuter',
      }
    : names
}
