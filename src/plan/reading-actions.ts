import type { Action, Need } from './action.ts'
import type { AxleName, Place } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'

/** Settling, reading and setting. @source definition */
export interface ReadingActions {
  readonly setHeight: (axle: AxleName) => Action
  readonly settle: (
    axles: readonly AxleName[],
    nth: 1 | 'before reading' | 2,
    needs: readonly Need[],
  ) => Action
  readonly read: (axle: AxleName, kind: 'provisional' | 'proving', needs: readonly Need[]) => Action
  readonly setCamberAndCaster: (
    axle: AxleName,
    needs: readonly Need[],
    effects: Action['effects'],
    place: Place,
  ) => Action
  readonly setToe: (
    axle: AxleName,
    needs: readonly Need[],
    effects: Action['effects'],
    place: Place,
  ) => Action
}

/**
 * The actions that settle the vehicle, read its angles and set them.
 *
 * @param level over the pit or on the drive-on lift all wheels stand level, so that angles are read and set there too
 * @source common practice, no source
 */
export function readingActions(level: boolean): ReadingActions {
  const measured = (axle: AxleName): Need => ({
    key: keys.support(axle),
    is: level ? supports.onWheels : ['on its wheels', 'on slip plates'],
    why: level ? 'it stands on its wheels' : 'on ramps the axles stand at different heights',
    ...(level ? {} : { rule: 'I17' as const }),
  })
  const settled = (axle: AxleName): Need => ({
    key: keys.settled(axle),
    is: ['yes'],
    why: 'lowered wheels stand scrubbed in',
    rule: 'I17',
  })
  const pressures: Need = {
    key: keys.pressures,
    is: ['set'],
    why: 'pressure changes the height',
    rule: 'I17',
  }
  return {
    setHeight: (axle) =>
      makeAction({
        id: `set height ${axle}`,
        axle,
        verb: 'set height',
        words: `Set the ${axle} height by the anchor of the torsion bar, both sides, by the sheet`,
        tool: 'torsion bar tool',
        place: 'under',
        needs: [
          {
            key: keys.support(axle),
            is: ['wheels on ramps or over the pit'],
            why: 'it stands on its wheels',
            rule: 'I1',
          },
          {
            key: keys.settled(axle),
            is: ['yes'],
            why: 'a wheel that was lowered stands scrubbed in',
            custom: true,
          },
        ],
        effects: { [keys.heights]: 'set' },
        records: ['height of each wheel'],
        why: 'the bar was unwound',
      }),
    settle: (these, nth, needs) =>
      makeAction({
        id: `settle ${nth}`,
        verb: 'roll and settle',
        words: 'Roll about 2 m forward and back, jounce rear then front',
        needs: [
          ...these.map((axle) => ({
            key: keys.support(axle),
            is: ['on its wheels', 'on slip plates'],
            why: 'it rolls',
          })),
          { key: keys.pedal, is: ['firm'], why: say.pedal, rule: 'I18' },
          ...needs,
        ],
        effects: {
          [keys.chocks]: 'not set',
          ...Object.fromEntries(
            these.flatMap((axle) => [
              [keys.settled(axle), 'yes'],
              ...(nth === 2 ? [[keys.settledAgain(axle), 'yes']] : []),
            ]),
          ),
        },
        cautions: nth === 1 ? [say.pedal, say.toe] : [say.pedal],
        why: 'lowered wheels stand scrubbed in, and read wrong',
      }),
    read: (axle, kind, needs) =>
      makeAction({
        id: `read ${kind} ${axle}`,
        axle,
        verb: 'read angles',
        words:
          kind === 'proving' ? `Read the ${axle} angles: the proving reading` : `Read the ${axle} angles`,
        tool: 'gauges',
        how: { kind },
        needs: [
          measured(axle),
          settled(axle),
          pressures,
          { key: keys.steering, is: ['straight'], why: 'the wheels stand straight' },
          ...needs,
        ],
        effects: { [keys.reading(axle)]: kind === 'proving' ? 'proven' : 'provisional' },
        records: ['every reading with its gauge'],
        why:
          kind === 'proving'
            ? 'only what is read after the last joint is final counts'
            : 'what was touched moves the angles',
      }),
    setCamberAndCaster: (axle, needs, effects, place) =>
      makeAction({
        id: `set camber and caster ${axle}`,
        axle,
        verb: 'set camber and caster',
        words: `Set the ${axle} ${axle === 'front' ? 'caster, then camber' : 'camber'} as the readings ask`,
        tool: 'gauges',
        place,
        needs: [
          { key: keys.reading(axle), is: ['provisional'], why: 'it is set from a reading' },
          measured(axle),
          { ...settled(axle), custom: true },
          ...needs,
        ],
        effects: { [keys.camberAndCaster(axle)]: 'set', [keys.toe(axle)]: 'as found', ...effects },
        records: ['from, to, which way'],
        why: 'an adjuster or what it moves was touched',
      }),
    setToe: (axle, needs, effects, place) =>
      makeAction({
        id: `set toe ${axle}`,
        axle,
        verb: 'set toe',
        words: `Set the ${axle} toe, each wheel by itself${axle === 'front' ? ', steering wheel straight and held' : ''}`,
        tool: 'gauges',
        place,
        needs: [
          { key: keys.reading(axle), is: ['provisional'], why: 'it is set from a reading' },
          measured(axle),
          { ...settled(axle), custom: true },
          ...(axle === 'front'
            ? [
                {
                  key: keys.steeringWheel,
                  is: ['held, rack counted'],
                  why: 'each wheel is set from the steering wheel held straight',
                  rule: 'I17' as const,
                },
              ]
            : []),
          ...needs,
        ],
        effects: { [keys.toe(axle)]: 'set', ...effects },
        cautions: [say.toe],
        records: ['turns and flats, which way'],
        why: 'every other angle moves toe, so it comes last',
      }),
  }
}
