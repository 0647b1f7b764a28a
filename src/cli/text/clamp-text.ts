import type { Sheet, SheetNumber } from '../../sheet/index.ts'
import { heading, paragraph } from './paragraph.ts'

const number = (n: SheetNumber): string => `${n.text} ${n.spread}`.trim()

/** The pose in which bush bolts are final, wheel by wheel. */
export function clampText({ clamp }: Sheet): string {
  const blocks = clamp.map((pose) => {
    const target = pose.target ? [`    target height ${number(pose.target)}`] : []
    const lines = [pose.title, ...target, paragraph(pose.targetWhy, '    ')]
    if (pose.raise) lines.push(`    raise the hub from where it hangs by ${number(pose.raise)}`)
    if (pose.armTurn) lines.push(`    the arm then turns ${number(pose.armTurn)} against the body`)
    for (const bush of pose.bushes) {
      const cost = [
        `${bush.letter}  ${bush.name}: ${number(bush.twistHanging)} of twist if tightened hanging`,
        bush.torque ? `${number(bush.torque)}` : '',
        bush.height ? `ride height off by ${number(bush.height)}` : '',
      ]
      lines.push(`    ${cost.filter(Boolean).join('; ')}`, `       ${bush.rule}`)
    }
    for (const caution of pose.cautions) lines.push(paragraph(`! ${caution}`, '    '))
    return lines.join('\n')
  })
  return [heading('Clamp pose'), ...blocks].join('\n')
}
