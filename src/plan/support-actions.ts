import type { Action, Need } from './action.ts'
import type { AxleName } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'

/** The actions that change what carries the vehicle. @source definition */
export interface SupportActions {
  readonly chock: () => Action
  readonly jackUp: (axle: AxleName) => Action
  readonly stands: (axle: AxleName) => Action
  readonly seeLoaded: (axle: AxleName) => Action
  readonly lift: () => Action
  readonly lockArms: () => Action
  readonly tailSupport: () => Action
  /** @param needs what must be done up before weight comes on the wheels */
  readonly lower: (axles: readonly AxleName[], needs: readonly Need[]) => Action
  /** @param level all wheels stand level there: angles are set there */
  readonly ontoRamps: (level: boolean) => Action
  readonly offRamps: () => Action
}

/**
 * Lifting, holding and lowering the vehicle.
 *
 * @param axles the axles of the assembly
 * @source common practice, no source
 */
export function supportActions(axles: readonly AxleName[]): SupportActions {
  const many = axles.length > 1
  const all = (value: string) => Object.fromEntries(axles.map((axle) => [keys.support(axle), value]))
  const each = (is: readonly string[], why: string): readonly Need[] =>
    axles.map((axle) => ({ key: keys.support(axle), is, why }))
  const firm: readonly Need[] = [
    { key: keys.pedal, is: ['firm'], why: say.pedal, rule: 'I18' },
    ...axles.map((axle) => ({ key: keys.support(axle), is: ['on its wheels'], why: 'it rolls there' })),
  ]
  return {
    chock: () =>
      makeAction({
        id: 'chock',
        verb: 'chock',
        words: 'Chock the wheels that stay down, on both sides of the tyre, and pull the parking brake',
        effects: { [keys.chocks]: 'set' },
        why: 'a vehicle on jack and stands rolls off them',
        tool: 'chocks',
      }),
    jackUp: (axle) =>
      makeAction({
        id: `jack up ${axle}`,
        axle,
        verb: 'jack up',
        words: `Jack the ${axle} axle up at its lifting point`,
        tool: 'trolley jack',
        needs: [
          { key: keys.support(axle), is: ['on its wheels'], why: 'it stands on its wheels' },
          { key: keys.chocks, is: ['set'], why: 'it would roll', rule: 'I1' },
          { key: keys.jack, is: ['free'], why: 'the jack is free' },
        ],
        effects: {
          [keys.support(axle)]: 'on a jack',
          [keys.settled(axle)]: 'no',
          [keys.reading(axle)]: 'none',
          [keys.clearance]: 'not seen',
          [keys.jack]: 'in use',
        },
        cautions: [say.jackAlone],
        why: 'the work is done with the wheels hanging',
      }),
    stands: (axle) =>
      makeAction({
        id: `stands ${axle}`,
        axle,
        verb: 'stands',
        words: `Put stands under the frame at the ${axle} axle and lower onto them`,
        tool: 'stands',
        needs: [{ key: keys.support(axle), is: ['on a jack'], why: 'it is lifted' }],
        effects: { [keys.support(axle)]: 'on stands', [keys.jack]: 'free' },
        cautions: [say.stands],
        why: 'a jack lifts, it does not carry',
      }),
    seeLoaded: (axle) =>
      makeAction({
        id: `see loaded ${axle}`,
        axle,
        verb: 'see loaded',
        words: `See both ${axle} stands loaded, and push the vehicle before anybody reaches under it`,
        needs: [{ key: keys.support(axle), is: ['on stands'], why: 'it is on its stands' }],
        effects: { [keys.support(axle)]: 'on stands, seen loaded' },
        cautions: [say.stands],
        records: ['both stands carry'],
        why: 'stands that carry nothing hold nothing',
      }),
    lift: () =>
      makeAction({
        id: 'lift',
        verb: 'lift',
        words: 'Set the pads, lift until the wheels are free, look at every pad, then lift to working height',
        tool: 'lift',
        needs: [...each(['on its wheels'], 'it stands on its wheels')],
        effects: {
          ...all('on the lift'),
          [keys.clearance]: 'not seen',
          ...Object.fromEntries(
            axles.flatMap((axle) => [
              [keys.settled(axle), 'no'],
              [keys.reading(axle), 'none'],
            ]),
          ),
        },
        cautions: [say.lift],
        why: 'the work is done with the wheels hanging',
      }),
    lockArms: () =>
      makeAction({
        id: 'lock arms',
        verb: 'lock arms',
        words: 'Lower the lift into its locks and see every arm locked',
        tool: 'lift',
        needs: each(['on the lift'], 'it is lifted'),
        effects: all('on the lift, arms locked'),
        cautions: [say.lift],
        records: ['every pad carries, arms locked'],
        why: 'only locked arms carry',
      }),
    tailSupport: () =>
      makeAction({
        id: 'tail support',
        verb: 'tail support',
        words: 'Set the tail support under the end that will be the heavier one',
        tool: 'tail support',
        place: 'under',
        needs: each(supports.lifted, 'it is lifted'),
        effects: { [keys.tail]: 'set' },
        cautions: [say.heavy],
        why: 'a heavy unit comes off and shifts the balance',
      }),
    lower: (these, needs) =>
      makeAction({
        id: 'lower',
        axle: these.length === 1 ? these[0]! : null,
        verb: 'lower',
        words:
          many && these.length > 1
            ? 'Lower the vehicle onto its wheels'
            : `Lower the ${these[0]} axle onto its wheels`,
        tool: 'jack or lift',
        needs: [
          ...these.map((axle) => ({ key: keys.support(axle), is: supports.lifted, why: 'it is lifted' })),
          { key: keys.jack, is: ['free'], why: 'the jack is free' },
          ...needs,
        ],
        effects: {
          ...Object.fromEntries(these.map((axle) => [keys.support(axle), 'on its wheels'])),
          ...Object.fromEntries(these.map((axle) => [keys.settled(axle), 'no'])),
        },
        cautions: [say.stands, say.pedal],
        why: 'wheels are finally tightened, and bushes final, with the weight on the wheels',
      }),
    ontoRamps: (level) =>
      makeAction({
        id: 'onto ramps',
        verb: 'drive onto ramps',
        words: level
          ? 'Roll it over the pit or onto the drive-on lift, all wheels level: angles are set there; chock it, brake on'
          : 'Roll it onto ramps, over the pit or onto the drive-on lift; chock it, brake on',
        tool: 'ramps, pit or drive-on lift',
        how: level ? { wheels: 'level' } : {},
        needs: firm,
        effects: { ...all('wheels on ramps or over the pit'), [keys.chocks]: 'set' },
        cautions: [say.toe, say.pedal],
        why: 'hands reach the bolts from under while the wheels carry the weight',
      }),
    offRamps: () =>
      makeAction({
        id: 'off ramps',
        verb: 'drive off ramps',
        words: 'Roll it off again, onto the measuring place',
        tool: 'ramps, pit or drive-on lift',
        needs: each(['wheels on ramps or over the pit'], 'it stands there'),
        effects: {
          ...all('on its wheels'),
          [keys.chocks]: 'not set',
          ...Object.fromEntries(axles.map((axle) => [keys.settled(axle), 'no'])),
        },
        why: 'angles are read on the measuring place',
      }),
  }
}
