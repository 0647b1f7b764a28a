import type { Action, Need } from './action.ts'
import type { AxleName, JointNode } from './assembly.ts'
import type { Choice } from './choice.ts'
import { closingActions } from './closing-actions.ts'
import type { Consequence } from './consequence.ts'
import { hasPin } from './has-pin.ts'
import { undoingActions } from './joint-actions.ts'
import { keys } from './keys.ts'
import { needsMark } from './needs-mark.ts'
import { readingActions } from './reading-actions.ts'
import { steeringTurner } from './steering-turner.ts'
import { supportActions } from './support-actions.ts'
import { supports } from './supports.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'

/**
 * What is done once the vehicle stands on its wheels again: settled, bush bolts final at ride height, angles read and
 * set, rear before front, camber and caster before toe, what holds an adjuster final after the last move, lock nuts
 * after toe, and the proving reading after all of them.
 *
 * @param later joints that are not final yet
 * @source common practice, no source
 */
export function anglesActions(
  work: Work,
  choice: Choice,
  later: readonly JointNode[],
  follows: readonly Consequence[],
): readonly Action[] {
  const { assembly } = work
  const care = readingActions()
  const support = supportActions(assembly.axles)
  const read = [...assembly.axles]
    .sort((a, b) => (a === b ? 0 : a === 'rear' ? -1 : 1))
    .filter((axle) => follows.some((one) => one.kind === 'angles' && one.axle === axle))
  const done = (joint: JointNode) =>
    joint.final === 'on the ground' ||
    (joint.final === 'at ride height' && !joint.adjusts && choice.raised.has(whereOf(joint)))
  const anchors = later.filter(({ kind }) => kind === 'anchor bolt')
  const open = later.filter((joint) => !done(joint) && !anchors.includes(joint))
  if (open.length === 0 && read.length === 0 && anchors.length === 0) return []
  const first = open.filter((joint) => !joint.adjusts)
  const held = open.filter((joint) => joint.adjusts)
  const toes = Object.values(assembly.adjusters)
    .filter((one) => one.sets === 'toe' && read.includes(one.axle))
    .flatMap(({ joints }) => joints.map((id) => assembly.joints[id]!))
    .filter(({ adjusts }) => adjusts)
  const onRamps =
    anchors.length > 0 ||
    [...open, ...toes].some(({ place, final }) => place === 'under' && final === 'at ride height')

  const actions: Action[] = [care.settle(assembly.axles, 1, wheelsTight(work))]
  if (onRamps) actions.push(support.ontoRamps())
  const steering = steeringTurner(assembly.axles, 'ride', (action) => actions.push(action))
  const finish = (joint: JointNode) => {
    steering.for(joint)
    const acts = closingActions(work, joint)
    actions.push(acts.final('on its wheels'))
    if (hasPin(joint)) actions.push(acts.pin())
    if (joint.red) actions.push(acts.check())
  }
  const unwound = [...new Set(anchors.map(({ axle }) => axle))]
  for (const axle of unwound) actions.push(care.setHeight(axle))
  for (const joint of anchors) finish(joint)
  for (const joint of first) finish(joint)
  steering.to('straight')

  const finals: readonly Need[] = [...work.open, ...work.bench]
    .filter((id) => !assembly.joints[id]!.adjusts)
    .map((id) => ({
      key: keys.joint(id),
      is: ['final', 'checked'],
      why: 'an open joint reads wrong',
      rule: 'I17',
    }))
  let after: readonly Need[] = []
  for (const axle of read) {
    const isLast = axle === read.at(-1)
    after = setAxle(work, axle, {
      after,
      isLast,
      finals,
      held: held.filter((joint) => joint.axle === axle),
      actions,
      steering,
    })
  }
  const left = held.filter(({ axle }) => !read.includes(axle))
  for (const joint of left) finish(joint)
  steering.to('straight')
  if (onRamps) actions.push(support.offRamps())
  if (read.length > 0) {
    const isMoved = actions.some(({ verb }) =>
      ['drive off ramps', 'set toe', 'set camber and caster'].includes(verb),
    )
    if (isMoved)
      actions.push(
        care.settle(
          assembly.axles,
          2,
          allFinal(work, actions).map((need) => ({ ...need, custom: true as const })),
        ),
      )
    const again: readonly Need[] = (isMoved ? assembly.axles : []).map((axle) => ({
      key: keys.settledAgain(axle),
      is: ['yes'],
      why: 'it is settled again after the last joint',
      custom: true,
    }))
    for (const axle of read) actions.push(care.read(axle, 'proving', [...again, ...allFinal(work, actions)]))
  }
  return actions
}

/**
 * Reads one axle, sets it, and makes final what holds its adjusters; gives what the next axle waits for. An axle with
 * nothing to set is read all the same when another comes after it: that one is set to its thrust line.
 */
function setAxle(
  work: Work,
  axle: AxleName,
  {
    after,
    isLast,
    finals,
    held,
    actions,
    steering,
  }: {
    readonly after: readonly Need[]
    readonly isLast: boolean
    readonly finals: readonly Need[]
    readonly held: readonly JointNode[]
    readonly actions: Action[]
    readonly steering: ReturnType<typeof steeringTurner>
  },
): readonly Need[] {
  const { assembly } = work
  const care = readingActions()
  const adjusters = Object.values(assembly.adjusters).filter((one) => one.axle === axle)
  const isToe = (joint: JointNode) =>
    adjusters.some((one) => one.sets === 'toe' && one.joints.includes(joint.id))
  const leans = held.filter((joint) => !isToe(joint))
  const toes = adjusters
    .filter(({ sets }) => sets === 'toe')
    .flatMap(({ joints }) => joints)
    .map((id) => assembly.joints[id]!)
    .filter(({ adjusts }) => adjusts)
  const marked = new Set([...work.open, ...work.bench])
  const sets = leans.length > 0 || toes.length > 0
  if (sets || !isLast) actions.push(care.read(axle, 'provisional', [...finals, ...after]))
  const next: Need =
    toes.length > 0
      ? { key: keys.toe(axle), is: ['set'], why: 'rear before front', rule: 'I17' }
      : { key: keys.reading(axle), is: ['provisional', 'proven'], why: 'rear before front', rule: 'I17' }
  if (!sets) return [next]
  const needed = (joints: readonly JointNode[]): readonly Need[] =>
    joints.map((joint) => ({
      key: keys.mark(joint.id),
      is: ['recorded', 'recorded, body side too'],
      why: 'how it was is lost once it moves',
      rule: 'I15',
    }))
  if (leans.length > 0)
    actions.push(
      care.setCamberAndCaster(
        axle,
        [
          ...leans.map((joint) => ({
            key: keys.joint(joint.id),
            is: ['run up'],
            why: 'nipped up, so that it moves',
          })),
          ...underNeeds(axle, leans),
        ],
        Object.fromEntries(
          leans
            .flatMap((joint) => adjusters.filter((one) => one.joints.includes(joint.id)))
            .map(({ id }) => [keys.adjuster(id), 'set']),
        ),
        leans.some(({ place }) => place === 'under') ? 'under' : 'at the wheel',
      ),
    )
  if (toes.length > 0 || adjusters.length > 0) {
    const untouched = toes.filter(({ id }) => !marked.has(id))
    for (const joint of untouched)
      if (needsMark(joint)) {
        const mark = undoingActions(work, joint).mark()
        actions.push({
          ...mark,
          needs: [
            {
              key: keys.support(axle),
              is: joint.place === 'under' ? supports.handsUnder : supports.carried,
              why: 'it is carried while hands are at it',
              rule: 'I1',
            },
          ],
        })
      }
    if (toes.length > 0) {
      actions.push(
        care.setToe(
          axle,
          [
            ...needed(untouched),
            ...(leans.length > 0
              ? [
                  {
                    key: keys.camberAndCaster(axle),
                    is: ['set'],
                    why: 'camber and caster move toe',
                    rule: 'I17' as const,
                  },
                ]
              : []),
            { key: keys.steering, is: ['straight'], why: 'the steering wheel is straight and held' },
            ...underNeeds(axle, toes),
          ],
          {
            ...Object.fromEntries(toes.map(({ id }) => [keys.joint(id), 'run up'])),
            // The rods have moved under standing tyres; a bush bolt at ride height waits for nothing more.
            ...(held.some(({ final }) => final === 'at ride height') ||
            toes.some(({ final }) => final === 'at ride height')
              ? {}
              : { [keys.settled(axle)]: 'no' }),
            ...Object.fromEntries(
              untouched
                .filter(({ file }) => file.reuse === 'new')
                .map(({ id }) => [keys.fastener(id), 'new']),
            ),
            ...Object.fromEntries(
              toes
                .flatMap((joint) => adjusters.filter((one) => one.joints.includes(joint.id)))
                .map(({ id }) => [keys.adjuster(id), 'set']),
            ),
          },
          toes.some(({ place }) => place === 'under') ? 'under' : 'at the wheel',
        ),
      )
    }
  }
  for (const joint of [...leans, ...toes]) {
    if (isToe(joint)) steering.to('straight')
    else steering.for(joint)
    const acts = closingActions(work, joint)
    const final = acts.final('on its wheels')
    const after: readonly Need[] = isToe(joint) || toes.length === 0 ? [] : lastMove(axle)
    actions.push({ ...final, needs: [...final.needs, ...after] })
    if (hasPin(joint)) actions.push(acts.pin())
    if (joint.red) actions.push(acts.check())
  }
  steering.to('straight')
  return [next]
}

/** Hands under it only where something carries it over them. */
const underNeeds = (axle: AxleName, joints: readonly JointNode[]): readonly Need[] =>
  joints.some(({ place }) => place === 'under')
    ? [
        {
          key: keys.support(axle),
          is: supports.handsUnder,
          why: 'its bolts are reached from under',
          rule: 'I1',
        },
      ]
    : []

const lastMove = (axle: AxleName): readonly Need[] => [
  { key: keys.toe(axle), is: ['set'], why: 'toe is the last move', rule: 'I7' },
]
/** Wheel nuts are final before the vehicle rolls. */
const wheelsTight = ({ assembly, open }: Work): readonly Need[] =>
  [...open]
    .filter((id) => assembly.joints[id]!.final === 'on the ground')
    .map((id) => ({ key: keys.joint(id), is: ['final', 'checked'], why: 'it rolls on them' }))

/** Every joint that was touched is final. */
function allFinal(work: Work, actions: readonly Action[]): readonly Need[] {
  const set = actions.flatMap(({ effects }) => Object.keys(effects)).filter((key) => key.startsWith('joint '))
  const touched = [...work.open, ...work.bench].map(keys.joint)
  return [...new Set([...touched, ...set])].map((key) => ({
    key,
    is: ['final', 'checked'],
    why: 'only what is read after the last joint is final counts',
    rule: 'I17',
  }))
}
