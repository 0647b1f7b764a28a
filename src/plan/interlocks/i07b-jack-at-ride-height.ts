import { dropLinkJoints } from '../drop-link-joints.ts'
import { keys } from '../keys.ts'
import { supports } from '../supports.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I7b', would, instead })
const rather = 'Rather let the wheels carry it on ramps, blocks or the ground.'

/**
 * At ride height with the spring in, a jack under the arm carries nearly the whole corner and can lift the body off
 * its stand: the stand stays fitted and its gap watched, the load estimated, nobody under; the anti-roll link off, or
 * both sides raised.
 *
 * @source own derivation: docs/methods/plan.md
 */
export const jackAtRideHeight: Interlock = (moment) => {
  const { action, assembly } = moment
  if (action.verb === 'raise to ride height') return raising(moment)
  const axles = looks.axles(moment)
  const lifted = axles.find((axle) => looks.value(moment, keys.gap(axle)) === 'open')
  if (lifted && action.verb !== 'jack away')
    return broken(
      'The jack has lifted the body off its stand: the corner stands on the jack alone.',
      `Lower the jack until the stand carries again. ${rather}`,
    )
  const raised = axles.some((axle) =>
    ['left', 'right'].some(
      (side) => looks.value(moment, keys.arm(`${axle} ${side}`)) === 'raised to ride height',
    ),
  )
  const link = looks.joint(moment)?.joins.some((part) => assembly.parts[part]!.kind === 'drop link')
  const here = `${action.axle} ${action.side}`
  if (link && action.verb === 'run up' && looks.value(moment, keys.arm(here)) === 'raised to ride height')
    return broken(
      'The anti-roll bar is joined with one side raised: it pulls as the jack goes, and lifts the other side.',
      'Lower the jack first, then join the link.',
    )
  if (raised && action.place === 'under')
    return broken(
      'The jack carries nearly the whole corner, and somebody would be under it.',
      `Nobody under. ${rather}`,
    )
  return null
}

function raising(moment: Moment): Broken | null {
  const { action, assembly } = moment
  const { axle, side, how } = action
  if (!axle || !side) return null
  if (!(supports.lifted as readonly string[]).includes(looks.value(moment, keys.support(axle))))
    return broken(
      'The body is not on its stands: the jack would carry all of it.',
      `Stands first, seen loaded. ${rather}`,
    )
  if (how['gap'] !== 'watched' || how['load'] !== 'estimated')
    return broken(
      'At ride height the jack carries nearly the whole corner and can lift the body off its stand.',
      `Leave the stand fitted, watch its gap, estimate the load on the jack: about that of the corner. ${rather}`,
    )
  const link = dropLinkJoints(assembly, { axle, side })
  const isOff = link.some((joint) => ['open', 'started'].includes(looks.value(moment, keys.joint(joint))))
  const other = side === 'left' ? 'right' : 'left'
  const both = looks.value(moment, keys.arm(`${axle} ${other}`)) === 'raised to ride height'
  if (link.length > 0 && !isOff && !both)
    return broken(
      'The anti-roll bar takes the load across: one side goes up, the other pulls the body off its stand.',
      'Take the anti-roll link off, or raise both sides alike.',
    )
  return null
}
