import type { Action, Need } from './action.ts'
import { aftercareActions } from './aftercare-actions.ts'
import type { AxleName, JointNode } from './assembly.ts'
import { closingActions } from './closing-actions.ts'
import { hasPin } from './has-pin.ts'
import { undoingActions } from './joint-actions.ts'
import { keys } from './keys.ts'
import { needsMark } from './needs-mark.ts'
import type { ReadingActions } from './reading-actions.ts'
import type { steeringTurner } from './steering-turner.ts'
import { supports } from './supports.ts'
import type { Work } from './work.ts'

/**
 * Reads one axle, sets it, and makes final what holds its adjusters; gives what the next axle waits for. An axle with
 * nothing to set is read all the same when another comes after it: that one is set to its thrust line.
 *
 * @source common practice, no source
 */
export function setAxle(
  work: Work,
  axle: AxleName,
  {
    after,
    isLast,
    finals,
    held,
    care,
    actions,
    steering,
  }: {
    readonly after: readonly Need[]
    readonly isLast: boolean
    readonly finals: readonly Need[]
    readonly held: readonly JointNode[]
    readonly care: ReadingActions
    readonly actions: Action[]
    readonly steering: ReturnType<typeof steeringTurner>
  },
): readonly Need[] {
  const { assembly } = work
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
      if (axle === 'front') actions.push(hold(work, leans.length > 0))
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

/** The steering wheel is held once camber and caster are set, before the toe. */
const hold = ({ assembly }: Work, leans: boolean): Action =>
  aftercareActions(assembly.axles).holdWheel(', toe', [
    { key: keys.reading('front'), is: ['provisional'], why: 'it is held for the toe', custom: true },
    ...(leans
      ? [
          {
            key: keys.camberAndCaster('front'),
            is: ['set'],
            why: 'camber and caster move toe',
            custom: true as const,
          },
        ]
      : []),
  ])
