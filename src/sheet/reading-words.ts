import type { ReadingName } from '../linkage/index.ts'

/** How a reading is called on the sheet. */
export interface ReadingWords {
  readonly label: string
  readonly of: string
}

const angles: Readonly<Record<string, string>> = {
  camber: 'Camber',
  caster: 'Caster',
  sai: 'SAI',
  toe: 'Toe',
}

/**
 * A reading's name in two parts: what it is, and of which wheel or axle.
 *
 * @example readingWords('front left toe to thrust').of // 'left front, to the thrust line'
 * @source common practice, no source
 */
export function readingWords(name: ReadingName): ReadingWords {
  if (name === 'thrust') return { label: 'Thrust angle', of: 'right is plus' }
  const words = name.split(' ')
  const end = words[0]!
  if (words[1] === 'total') return { label: 'Toe, total', of: end }
  if (words[1] === 'cross')
    return { label: `Cross ${words[2]!.replace('sai', 'SAI')}`, of: `${end}, left minus right` }
  const toThrust = words.length > 3 ? ', to the thrust line' : ''
  return { label: angles[words[2]!] ?? words[2]!, of: `${words[1]} ${end}${toThrust}` }
}

/**
 * The order in which a sheet lists readings: the steered axle first, since most of what is set is there; on each
 * axle as it is set, toe last. (The moves themselves go rear before front.)
 *
 * @source own choice
 */
export const readingOrder: readonly ReadingName[] = [
  'front left caster',
  'front right caster',
  'front cross caster',
  'front left camber',
  'front right camber',
  'front cross camber',
  'front left sai',
  'front right sai',
  'front cross sai',
  'front left toe',
  'front right toe',
  'front left toe to thrust',
  'front right toe to thrust',
  'front total toe',
  'rear left camber',
  'rear right camber',
  'rear cross camber',
  'rear left toe',
  'rear right toe',
  'rear total toe',
  'thrust',
]
