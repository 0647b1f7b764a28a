import type { JobState } from '../job/index.ts'
import type { ArrivalSheet, ArrivalWheel } from './arrival-sheet.ts'

type Missing = ArrivalSheet['missing'][number]

/**
 * What of the arrival is not noted, and why it matters, in the order in which a person comes to it.
 *
 * @source common practice, no source
 */
export function arrivalMissing(
  { arrival, opened, pressures }: JobState,
  wheels: readonly ArrivalWheel[],
  isLifted: boolean,
): readonly Missing[] {
  const of = (texts: (wheel: ArrivalWheel) => boolean) =>
    wheels.filter((wheel) => !texts(wheel)).map(({ wheel }) => wheel)
  const without = (place: Missing['place'], wheels: readonly string[], what: string, why: string) =>
    wheels.length === 0
      ? []
      : [{ place, what: wheels.length === 4 ? what : `${what}, ${wheels.join(', ')}`, why }]
  const told = (has: unknown, what: string, why: string): readonly Missing[] =>
    has === undefined || has === null ? [{ place: 'told', what, why }] : []
  return [
    ...told(arrival?.asked, 'What the owner asked for', 'without it nobody can tell the job from extra work'),
    ...told(
      arrival?.consent,
      'What is agreed, and up to which limit',
      'every part beyond it waits for a call',
    ),
    ...told(
      arrival?.mileage ?? opened?.mileage,
      'Mileage',
      'follow-ups after a distance are counted from it',
    ),
    ...told(
      arrival?.firstTest,
      'Whether it may be driven for a first test',
      'a pull or a knock is felt best by whoever mends it, and a loose wheel ends the drive',
    ),
    ...told(arrival?.vin, 'VIN', 'parts and values are looked up by it'),
    ...without(
      'tyres',
      of(({ tyre }) => tyre?.texts['pressure'] !== undefined),
      'Tyre pressures as found',
      'a pull or a worn shoulder may be nothing else',
    ),
    ...without(
      'tyres',
      of(({ tyre }) => tyre !== null && (tyre.wear.length > 0 || depthNames.some((one) => tyre.texts[one]))),
      'Tread, three depths a wheel',
      'it shows what the angles did over a year, before any is read',
    ),
    ...(pressures
      ? []
      : [
          {
            place: 'pressures' as const,
            what: 'Pressures as set',
            why: 'heights, camber and toe follow them',
          },
        ]),
    ...without(
      'heights',
      of(({ height }) => height !== null),
      isLifted ? 'Ride heights' : 'Ride heights before it is lifted',
      isLifted
        ? 'it was lifted already: let it down, roll it 2 m forward and back, jounce it, and measure'
        : 'once it is lifted they are gone',
    ),
  ]
}

const depthNames = ['depths.outer', 'depths.middle', 'depths.inner'] as const
