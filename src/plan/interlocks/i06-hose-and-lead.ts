import { agrees } from '../agrees.ts'
import { flexibleParts } from '../flexible-parts.ts'
import { jointsOf } from '../joints-of.ts'
import { keys } from '../keys.ts'
import { whereOf } from '../where-of.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

/**
 * Hose bracket and sensor lead are free before the knuckle can move further than they reach; a caliper that is off
 * hangs on a hook, never on its hose.
 *
 * @source common practice, no source
 */
export const hoseAndLead: Interlock = (moment) => {
  const { action } = moment
  const joint = looks.joint(moment)
  const hold = looks.hold(moment)
  if (action.verb === 'let down with the jack' && hold) {
    const tight = flexibleParts(moment.assembly, hold).find(
      ({ part, freedBy }) =>
        looks.value(moment, keys.part(part.id)) === 'fitted' &&
        !freedBy.some((set) => set.every((id) => looks.value(moment, keys.joint(id)) === 'open')),
    )
    if (tight)
      return {
        rule: 'I6',
        would: `The arm goes lower than the ${tight.part.called} reaches, and it tears inside where nobody sees it.`,
        instead: `Free the ${tight.part.called} first.`,
      }
  }
  if (joint?.locates && looks.isUndoing(action) && action.place !== 'at the bench') {
    const tight = flexibleParts(moment.assembly, joint).find(
      ({ part, freedBy }) =>
        looks.value(moment, keys.part(part.id)) === 'fitted' &&
        !freedBy.some((set) =>
          set.every((id) => id === joint.id || looks.value(moment, keys.joint(id)) === 'open'),
        ),
    )
    if (tight)
      return {
        rule: 'I6',
        would: `The knuckle drops and hangs on the ${tight.part.called}, which tears inside where nobody sees it.`,
        instead: `Free the ${tight.part.called} first.`,
      }
  }
  const fixes = action.verb === 'connect' || action.verb === 'run up'
  const hose = joint?.joins
    .map((id) => moment.assembly.parts[id]!)
    .find(({ kind }) => ['hose', 'lead', 'height-sensor rod'].includes(kind))
  if (joint && fixes && hose && action.place !== 'at the bench') {
    const loose = looks
      .touched(moment)
      .find(
        (one) =>
          one.locates &&
          one.axle === joint.axle &&
          (one.side === null || joint.side === null || one.side === joint.side) &&
          ['open', 'started'].includes(looks.value(moment, keys.joint(one.id))),
      )
    if (loose)
      return {
        rule: 'I6',
        would: `The ${loose.called} ${agrees(loose.called, 'is', 'are')} open: the knuckle would hang on the ${hose.called}.`,
        instead: 'Run up what locates the knuckle first, then fix hose and lead.',
      }
  }
  return action.verb === 'take off' ? hanging(moment) : null
}

function hanging(moment: Moment): Broken | null {
  const { assembly } = moment
  const part = looks.part(moment)
  if (!part) return null
  const calipers = Object.values(assembly.parts).filter(
    (one) => one.kind === 'caliper' && whereOf(one) === whereOf(part),
  )
  for (const caliper of calipers) {
    if (caliper.id !== part.id && !['knuckle', 'hub', 'disc', 'brake carrier'].includes(part.kind)) continue
    if (caliper.id !== part.id && looks.value(moment, keys.part(caliper.id)) !== 'fitted') continue
    const hose = jointsOf(assembly, caliper.id).find(
      (joint) =>
        joint.joins.some((one) => assembly.parts[one]!.kind === 'hose') &&
        looks.value(moment, keys.joint(joint.id)) !== 'open',
    )
    const hoses = Object.values(assembly.parts).filter(
      (one) => one.kind === 'hose' && whereOf(one) === whereOf(caliper),
    )
    if (hose || (caliper.id !== part.id && hoses.length > 0))
      return {
        rule: 'I6',
        would: `The ${caliper.called} would hang on its hose, which strains it where nobody sees it.`,
        instead: 'Hang the caliper on a hook.',
      }
  }
  return null
}
