import type { Action, Need } from './action.ts'
import type { Assembly } from './assembly.ts'
import { factOf } from './fact-of.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'
import { supports } from './supports.ts'

/**
 * An action as it is once some of it was done already: a joint that nobody touched is as good as final, a line that is
 * bled needs no bleeding, a mark that can no longer be taken is not waited for. Null when nothing of it is left.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function asLeft(assembly: Assembly, action: Action, state: State): Action | null {
  const is = (key: string) => factOf(state, key)
  const needs: Need[] = action.needs.flatMap((need): readonly Need[] => {
    const { key } = need
    if (key.startsWith('joint ')) {
      const isOwn = key === keys.joint(action.joint ?? '')
      if (need.is.includes('final') && !need.is.includes('closed') && !isOwn)
        return [{ ...need, is: ['closed', ...need.is] }]
      if (action.verb === 'raise to ride height' && need.is.includes('run up'))
        return [{ ...need, is: ['closed', 'run up', 'final', 'checked'] }]
      if (need.is.includes('open') && need.is.includes('started') && isOwn)
        return [{ ...need, is: [...need.is, 'cracked', 'retained'] }]
    }
    // An adjuster that was set and made final before is left as it is.
    if (action.verb === 'set camber and caster' && key.startsWith('joint '))
      return ['final', 'checked'].includes(is(key)) ? [] : [need]
    if (key.startsWith('mark ') && is(key) === 'not recorded') {
      const stage = jointStageOf(is(keys.joint(key.slice('mark '.length))))
      if (stage > 0) return []
    }
    if (action.verb === 'fit' && key.startsWith('part ') && need.is.includes('off'))
      return is(key) === action.effects[key] ? [] : [need]
    if (action.verb === 'compare' && key.startsWith('support ') && action.how['when'] === 'before lifting')
      return (supports.onWheels as readonly string[]).includes(is(key)) ? [need] : []
    if (action.verb === 'lower' && key.startsWith('support '))
      return [{ ...need, is: [...need.is, 'on its wheels'] }]
    if (key.startsWith('line ')) {
      if (action.verb !== 'bleed') return [{ ...need, is: ['tight', ...need.is] }]
      return is(key) === 'to bleed' ? [need] : []
    }
    if (key.startsWith('lamp ')) return [{ ...need, is: ['as found', ...need.is] }]
    if (key === keys.levelSensor) return [{ ...need, is: ['as found', ...need.is] }]
    return [need]
  })
  if (rolls.includes(action.verb)) needs.push(...onTightNuts(assembly, action))
  if (action.verb === 'raise to ride height' && is(keys.heights) === 'not recorded')
    return toTheSheet({ ...action, needs })
  const dropped = (start: string, left: string) =>
    Object.keys(action.effects).filter((key) => key.startsWith(start) && is(key) !== left)
  const spared =
    action.verb === 'bleed'
      ? dropped('line ', 'to bleed')
      : action.verb === 'look at lamp'
        ? dropped('lamp ', 'to look at')
        : []
  // A new part that came off again goes back as the new one.
  const isNew = (key: string, value: string) =>
    key.startsWith('part ') && value === 'fitted' && is(keys.compared(key.slice(5))) === 'beside the old'
  const effects = Object.fromEntries(
    Object.entries(action.effects)
      .filter(([key]) => !spared.includes(key))
      .map(([key, value]) => [key, isNew(key, value) ? 'new' : value]),
  )
  if (spared.length > 0 && Object.keys(effects).every((key) => key.startsWith('stage '))) return null
  if (action.verb === 'appoint re-tightening')
    if (assembly.axles.every((axle) => is(keys.wheelOff(axle)) === 'never')) return null
  return { ...action, needs, effects }
}

const rolls: readonly Action['verb'][] = [
  'roll and settle',
  'drive onto ramps',
  'drive off ramps',
  'road test',
]

/** Whatever was reopened meanwhile, it rolls only on wheel nuts that are final. */
const onTightNuts = ({ joints }: Assembly, { needs }: Action): readonly Need[] =>
  Object.values(joints)
    .filter(({ kind, id }) => kind === 'wheel nuts' && !needs.some(({ key }) => key === keys.joint(id)))
    .map(({ id }) => ({
      key: keys.joint(id),
      is: ['closed', 'final', 'checked'],
      why: 'it rolls on them',
      rule: 'I2',
    }))

/** Nobody wrote the heights down before lifting: only the sheet says to which one. */
const toTheSheet = (action: Action): Action => ({
  ...action,
  how: { ...action.how, target: 'the sheet' },
  words: action.words.replace('as recorded before lifting', 'as the sheet says'),
  needs: action.needs.filter(({ key }) => key !== keys.heights),
})
