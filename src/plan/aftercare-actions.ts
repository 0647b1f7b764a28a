import type { Action, Need } from './action.ts'
import type { AxleName, PartNode, Place } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'

/** What a job needs before and after the work on the joints. @source definition */
export interface AftercareActions {
  readonly recordHeights: () => Action
  readonly setPressures: () => Action
  readonly steer: (to: 'left lock' | 'right lock' | 'straight', nth: string) => Action
  readonly holdWheel: () => Action
  readonly airbagSafe: () => Action
  readonly bleed: (lines: readonly string[]) => Action
  readonly pump: () => Action
  readonly lamp: (leads: readonly PartNode[]) => Action
  readonly levelSensor: () => Action
  readonly settle: (axles: readonly AxleName[], nth: 1 | 2, needs: readonly Need[]) => Action
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
  readonly centre: () => Action
  readonly clearance: (needs: readonly Need[]) => Action
  readonly electronics: (what: string, needs: readonly Need[]) => Action
  readonly appoint: () => Action
  readonly roadTest: (needs: readonly Need[]) => Action
}

const grounded = (axles: readonly AxleName[]): readonly Need[] =>
  axles.map((axle) => ({ key: keys.support(axle), is: supports.onWheels, why: 'it stands on its wheels' }))
const cabin = { place: 'in the cabin' } as const

/**
 * The actions before lifting and after lowering that belong to the vehicle as a whole.
 *
 * @source common practice, no source
 */
export function aftercareActions(axles: readonly AxleName[]): AftercareActions {
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
    recordHeights: () =>
      makeAction({
        id: 'record heights',
        verb: 'record heights',
        words: 'Write down the ride height at each wheel, hub centre to arch edge, as it stands',
        tool: 'rule',
        needs: grounded(axles),
        effects: { [keys.heights]: 'recorded' },
        records: ['four heights'],
        why: 'bonded bushes are made final at it, and a sagged spring is seen by it',
      }),
    setPressures: () =>
      makeAction({
        id: 'set pressures',
        verb: 'set pressures',
        words: 'Set the tyre pressures',
        tool: 'tyre gauge',
        effects: { [keys.pressures]: 'set' },
        records: ['four pressures'],
        why: 'heights and angles count at set pressures only',
      }),
    steer: (to, nth) =>
      makeAction({
        ...cabin,
        id: `steer ${to}, ${nth}`,
        verb: 'steer',
        words: to === 'straight' ? 'Turn the steering straight' : `Turn the steering to ${to}`,
        needs: [{ key: keys.shaft, is: ['whole'], why: 'the steering wheel turns the rack', rule: 'I23' }],
        effects: { [keys.steering]: to },
        why:
          to === 'straight' ? 'the rest is done with the wheels straight' : 'a joint is reached only there',
      }),
    holdWheel: () =>
      makeAction({
        ...cabin,
        id: 'hold steering wheel',
        verb: 'hold steering wheel',
        words: 'Hold the steering wheel straight from the seat, and count the rack to its middle',
        tool: 'steering wheel holder',
        needs: [{ key: keys.steering, is: ['straight'], why: 'it is straight' }],
        effects: { [keys.steeringWheel]: 'held, rack counted' },
        cautions: [say.shaft],
        records: ['turns lock to lock, middle'],
        why: 'the steering wheel comes back straight, and what is behind it stays whole',
      }),
    airbagSafe: () =>
      makeAction({
        ...cabin,
        id: 'make airbag safe',
        verb: 'make airbag safe',
        words: 'Make the airbag safe by the maker’s own method',
        how: { method: 'the maker’s' },
        effects: { [keys.airbag]: 'made safe' },
        cautions: [say.airbag],
        why: 'the steering shaft is parted below it',
      }),
    bleed: (lines) =>
      makeAction({
        id: 'bleed',
        verb: 'bleed',
        words: 'Fill and bleed the lines that were open, pedal firm, no leak',
        tool: 'bleeder',
        place: 'at the wheel',
        needs: lines.map((line) => ({
          key: keys.line(line),
          is: ['to bleed'],
          why: 'the line is closed again',
        })),
        effects: Object.fromEntries(lines.map((line) => [keys.line(line), 'bled, no leak'])),
        cautions: [say.fluid],
        records: ['pedal firm, no leak'],
        why: 'air got into the lines that were opened',
      }),
    pump: () =>
      makeAction({
        ...cabin,
        id: 'pump pedal',
        verb: 'pump pedal',
        words: 'Pump the pedal until it is firm, and look at the level',
        needs: [{ key: keys.pedal, is: ['to pump', 'firm'], why: '' }],
        effects: { [keys.pedal]: 'firm' },
        cautions: [say.pedal],
        records: ['pedal firm'],
        why: 'the pads were moved: the first stroke is empty',
      }),
    lamp: (leads) =>
      makeAction({
        ...cabin,
        id: 'look at lamp',
        verb: 'look at lamp',
        words: `Ignition on: the warning lamp goes out (${leads.map(({ called }) => called).join(', ')})`,
        effects: Object.fromEntries(leads.map(({ id }) => [keys.lamp(id), 'looked at'])),
        records: ['lamp out'],
        why: 'a lead was unhooked',
      }),
    levelSensor: () =>
      makeAction({
        id: 'check level sensor',
        verb: 'check level sensor',
        words:
          'Check the level sensor: vehicle at its height, no fault; have it learned where the maker asks for it',
        needs: grounded(axles),
        effects: { [keys.levelSensor]: 'checked' },
        records: ['done, not fitted or sent out'],
        why: 'its rod was unhooked',
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
        effects: Object.fromEntries(
          these.flatMap((axle) => [
            [keys.settled(axle), 'yes'],
            ...(nth === 2 ? [[keys.settledAgain(axle), 'yes']] : []),
          ]),
        ),
        cautions: [say.pedal, say.toe],
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
          ...grounded([axle]),
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
          { ...settled(axle), custom: true },
          ...needs,
        ],
        effects: { [keys.camberAndCaster(axle)]: 'set', ...effects },
        records: ['from, to, which way'],
        why: 'an adjuster or what it moves was touched',
      }),
    setToe: (axle, needs, effects, place) =>
      makeAction({
        id: `set toe ${axle}`,
        axle,
        verb: 'set toe',
        words: `Set the ${axle} toe, each wheel by itself, steering wheel straight and held`,
        tool: 'gauges',
        place,
        needs: [
          { key: keys.reading(axle), is: ['provisional'], why: 'it is set from a reading' },
          { ...settled(axle), custom: true },
          ...needs,
        ],
        effects: { [keys.toe(axle)]: 'set', ...effects },
        cautions: [say.toe],
        records: ['turns and flats, which way'],
        why: 'every other angle moves toe, so it comes last',
      }),
    centre: () =>
      makeAction({
        ...cabin,
        id: 'centre steering wheel',
        verb: 'centre steering wheel',
        words: 'Look at the steering wheel from the seat: straight while the wheels are',
        needs: grounded(axles),
        records: ['straight, or how far off'],
        why: 'a rod was touched on one side',
      }),
    clearance: (needs) =>
      makeAction({
        id: 'see clearance',
        verb: 'see clearance',
        words: 'Turn lock to lock and look: hose, lead, tyre, shaft clear everywhere',
        place: 'at the wheel',
        needs: [...grounded(axles), ...needs],
        effects: { [keys.clearance]: 'seen' },
        records: ['clear lock to lock'],
        why: 'a hose that rubs is seen standing',
      }),
    electronics: (what, needs) =>
      makeAction({
        ...cabin,
        id: `electronics ${what}`,
        verb: 'electronics',
        words: `${what.slice(0, 1).toUpperCase()}${what.slice(1)}: done, not fitted or sent out`,
        needs: [...grounded(axles), ...needs],
        records: ['done, not fitted or sent out'],
        why: 'it counts from the angles that were touched',
      }),
    appoint: () =>
      makeAction({
        ...cabin,
        id: 'appoint re-tightening',
        verb: 'appoint re-tightening',
        words: 'Write the card for the driver: wheel nuts tightened again after the first distance',
        effects: { [keys.appointment]: 'made' },
        records: ['distance, who was told'],
        why: 'a wheel was off',
      }),
    roadTest: (needs) =>
      makeAction({
        ...cabin,
        id: 'road test',
        verb: 'road test',
        words: 'Road test by the list',
        needs: [...grounded(axles), ...needs],
        effects: { [keys.road]: 'driven' },
        cautions: [say.toe],
        why: 'it is proven on the road',
      }),
  }
}
