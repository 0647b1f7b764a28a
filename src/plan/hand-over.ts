import type { Action, Need } from './action.ts'
import type { AftercareActions } from './aftercare-actions.ts'
import type { Consequence } from './consequence.ts'
import { hasPin } from './has-pin.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import type { Work } from './work.ts'

const electronics = ['steering angle zero', 'camera or radar', 'headlamp aim']

/**
 * What stands between the last joint and the key: steering wheel, electronics, card, road test, handing over.
 *
 * @source common practice, no source
 */
export function handOver(
  work: Work,
  {
    tight,
    follows,
    care,
    earlier,
  }: {
    readonly tight: readonly Need[]
    readonly follows: readonly Consequence[]
    readonly care: AftercareActions
    /** What is done before. */
    readonly earlier: readonly Action[]
  },
): readonly Action[] {
  const { assembly } = work
  const touched = [...work.open, ...work.bench].map((id) => assembly.joints[id]!)
  const has = (kind: Consequence['kind']) => follows.some((one) => one.kind === kind)
  const proven: readonly Need[] = follows
    .filter(({ kind }) => kind === 'angles')
    .map(({ axle }) => ({
      key: keys.reading(axle!),
      is: ['proven'],
      why: 'toe is unset until it is proven',
      rule: 'I20',
    }))
  const pins: readonly Need[] = touched
    .filter(hasPin)
    .map(({ id }) => ({ key: keys.pin(id), is: ['new, legs bent', 'in'], why: 'its pin is in', rule: 'I20' }))
  const clear: readonly Need[] = [{ key: keys.clearance, is: ['seen'], why: 'nothing rubs', rule: 'I20' }]
  const lines: readonly Need[] = touched
    .filter(({ kind }) => kind === 'hydraulic union')
    .map(({ id }) => ({ key: keys.line(id), is: ['bled, no leak'], why: 'it is bled', rule: 'I20' }))
  const lamps = (follows.find(({ kind }) => kind === 'lamp')?.because ?? []).map(
    (id): Need => ({ key: keys.lamp(id), is: ['looked at'], why: 'its lamp was looked at', rule: 'I19' }),
  )
  const checked = earlier
    .filter(({ verb }) => verb === 'second check')
    .map(
      ({ joint }): Need => ({
        key: keys.joint(joint!),
        is: ['checked'],
        why: 'it has had its second look',
        rule: 'I21',
      }),
    )
  const level: readonly Need[] = has('level sensor')
    ? [{ key: keys.levelSensor, is: ['checked'], why: 'it was unhooked', rule: 'I19' }]
    : []
  const card: readonly Need[] = has('re-tighten')
    ? [{ key: keys.appointment, is: ['made'], why: 'a wheel was off', rule: 'I22' }]
    : []
  const firm: readonly Need[] = [{ key: keys.pedal, is: ['firm'], why: 'it has brakes', rule: 'I20' }]
  const actions: Action[] = []
  if (has('centring')) actions.push(care.centre())
  if (has('electronics'))
    for (const what of electronics)
      actions.push(
        care.electronics(
          what,
          proven.map((need) => ({ ...need, custom: true as const })),
        ),
      )
  if (has('re-tighten')) actions.push(care.appoint())
  const straight: readonly Need[] = [
    { key: keys.steering, is: ['straight'], why: 'it drives off straight', rule: 'I20' },
    { key: keys.steeringWheel, is: ['free'], why: 'the holder is out of the steering wheel', rule: 'I20' },
  ]
  const learned: readonly Need[] = has('electronics')
    ? electronics.map((what) => ({
        key: keys.learned(what),
        is: ['done'],
        why: 'lamps and cameras are proven on the road',
        custom: true,
      }))
    : []
  actions.push(
    care.roadTest([...tight, ...straight, ...learned, ...proven, ...pins, ...clear, ...lines, ...firm]),
  )
  actions.push(
    makeAction({
      id: 'hand over',
      verb: 'hand over',
      words: 'Hand the vehicle over with its record, its card and the date to look again',
      needs: [
        { key: keys.road, is: ['driven'], why: 'it was driven' },
        ...assembly.axles.map((axle) => ({
          key: keys.support(axle),
          is: ['on its wheels'],
          why: 'it stands on its wheels',
        })),
        ...proven,
        ...learned.map(({ custom: _, ...need }) => ({ ...need, why: 'it counts from the angles' })),
        ...lamps,
        ...level,
        ...card,
        ...checked,
        ...tight,
      ],
      effects: { [keys.handover]: 'done' },
      why: 'the job is done',
    }),
  )
  return actions
}
