import type { Action, Need } from './action.ts'
import type { AxleName, PartNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { supports } from './supports.ts'

/** What a job needs before and after the work on the joints. @source definition */
export interface AftercareActions {
  readonly recordHeights: () => Action
  readonly setPressures: () => Action
  readonly steer: (to: 'left lock' | 'right lock' | 'straight', nth: string) => Action
  /** @param nth more to its name where it is held again */
  readonly holdWheel: (nth?: string, needs?: readonly Need[]) => Action
  readonly airbagSafe: () => Action
  readonly bleed: (lines: readonly string[]) => Action
  readonly pump: (needs: readonly Need[]) => Action
  readonly lamp: (leads: readonly PartNode[], needs: readonly Need[]) => Action
  readonly levelSensor: () => Action
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
  return {
    recordHeights: () =>
      makeAction({
        id: 'record heights',
        verb: 'record heights',
        words: 'Write down the ride height at each wheel, hub centre to arch edge, as it stands',
        tool: 'rule',
        needs: [
          ...grounded(axles),
          { key: keys.pressures, is: ['set'], why: 'pressure changes the height', rule: 'I17' },
          ...axles
            .flatMap((axle) => [axle, `${axle} left`, `${axle} right`])
            .map((where) => ({
              key: keys.stage(where),
              is: ['whole'],
              why: 'it is the height as found',
              custom: true as const,
            })),
        ],
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
        effects: { [keys.steering]: to, [keys.steeringWheel]: 'free' },
        why:
          to === 'straight' ? 'the rest is done with the wheels straight' : 'a joint is reached only there',
      }),
    holdWheel: (nth = '', needs = []) =>
      makeAction({
        ...cabin,
        id: `hold steering wheel${nth}`,
        verb: 'hold steering wheel',
        words: 'Hold the steering wheel straight from the seat, and count the rack to its middle',
        tool: 'steering wheel holder',
        needs: [{ key: keys.steering, is: ['straight'], why: 'it is straight' }, ...needs],
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
        needs: lines.flatMap((line): readonly Need[] => [
          { key: keys.line(line), is: ['to bleed'], why: 'the line is closed again' },
          { key: keys.joint(line), is: ['final', 'checked'], why: 'it is tight' },
        ]),
        effects: Object.fromEntries(lines.map((line) => [keys.line(line), 'bled, no leak'])),
        cautions: [say.fluid],
        records: ['pedal firm, no leak'],
        why: 'air got into the lines that were opened',
      }),
    pump: (needs) =>
      makeAction({
        ...cabin,
        id: 'pump pedal',
        verb: 'pump pedal',
        words: 'Pump the pedal until it is firm, and look at the level',
        needs,
        effects: { [keys.pedal]: 'firm' },
        cautions: [say.pedal],
        records: ['pedal firm'],
        why: 'the pads were moved: the first stroke is empty',
      }),
    lamp: (leads, needs) =>
      makeAction({
        ...cabin,
        id: 'look at lamp',
        verb: 'look at lamp',
        words: `Ignition on: the warning lamp goes out (${leads.map(({ called }) => called).join(', ')})`,
        needs,
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
    centre: () =>
      makeAction({
        ...cabin,
        id: 'centre steering wheel',
        verb: 'centre steering wheel',
        words: 'Look at the steering wheel from the seat: straight while the wheels are',
        needs: grounded(axles),
        effects: { [keys.centring]: 'seen' },
        records: ['straight, or how far off'],
        why: 'a rod was touched on one side',
      }),
    clearance: (needs) =>
      makeAction({
        id: 'see clearance',
        verb: 'see clearance',
        words: axles.includes('front')
          ? 'Turn lock to lock and look: hose, lead, tyre, shaft clear everywhere'
          : 'Look: hose, lead, cable, tyre, shaft clear everywhere',
        place: 'at the wheel',
        needs: [...grounded(axles), ...needs],
        effects: {
          [keys.clearance]: 'seen',
          ...(axles.includes('front') ? { [keys.steeringWheel]: 'free' } : {}),
        },
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
        effects: { [keys.learned(what)]: 'done' },
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
        needs: [
          ...axles.map((axle) => ({
            key: keys.support(axle),
            is: ['on its wheels'],
            why: 'it is off ramps and plates',
          })),
          ...needs,
        ],
        effects: { [keys.road]: 'driven' },
        cautions: [say.toe],
        why: 'it is proven on the road',
      }),
  }
}
