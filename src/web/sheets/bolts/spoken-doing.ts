import type { SheetBolt } from '../../../sheet/index.ts'

const plain = (text: string) => text.replaceAll('**', '').replaceAll('N·m', 'newton metres')

/** The screen of a joint as it is read aloud, cautions first. */
export function spokenDoing({ name, wheel, letter, doing }: SheetBolt): string {
  const figures = doing.figures.map(
    ({ label, value, unit, atFastener }) =>
      `${label}: ${value} ${unit}${atFastener ? `, ${atFastener}` : ''}.`,
  )
  return [
    `${letter ? `${letter}. ` : ''}${name}, ${wheel}.`,
    doing.stand,
    ...doing.cautions,
    ...figures,
    ...(doing.with ? [`${doing.with}.`] : []),
    ...doing.blocked,
    ...doing.says,
  ]
    .map(plain)
    .join(' ')
}
