import type { Kit } from '../kit/index.ts'

/** A field to be read. */
interface AskField {
  /** Path in the entry's data. */
  readonly path: string
  /** What stands there until it is read: how the gauge is usually set up, else nothing. */
  readonly text: string
  /** How such a figure is written: "-0.4°". */
  readonly like: string
  /** How the gauge is set up: stays as it is until typed over. */
  readonly kept: boolean
}

/** One observation to be read, as an entry with empty places. @source definition */
export interface RoundAsk {
  readonly title: string
  readonly kind: 'reading' | 'ride height'
  /** The entry's data; what is to be read stands in it as an empty text. */
  readonly data: Readonly<Record<string, unknown>>
  readonly fields: readonly AskField[]
}

const sides = ['left', 'right'] as const
/** As far as most plates turn and most tables are made for. */
const sweepTo = 20

/**
 * What to read in the first round: the best that the kit can, and nothing that it cannot. Camber at two turns of the wheel
 * (the rim's run-out falls out), caster by a steer sweep, toe by strings where there are some, else by the tape, the
 * ride heights with the rule.
 *
 * @param axles that the job has a corner model for
 * @source own derivation: docs/methods/formats.md; the sweep's angle: common practice, no source
 */
export function firstRound(kit: Kit | null, axles: readonly ('front' | 'rear')[]): readonly RoundAsk[] {
  if (!kit) return []
  const has = (kind: Kit['gauges'][string]['kind']) =>
    Object.entries(kit.gauges).find(([, gauge]) => gauge.kind === kind)?.[0] ?? null
  const [level, rule, tape, strings] = [has('inclinometer'), has('rule'), has('tape'), has('strings')]
  const plates = has('turn plates') ?? has('string and protractor')
  const wheels = axles.flatMap((axle) => sides.map((side) => `${axle} ${side}`))
  return [
    ...(rule ? wheels.map((wheel) => height(wheel, rule)) : []),
    ...(level ? wheels.map((wheel) => camber(wheel, level)) : []),
    ...(level && axles.includes('front') ? sides.map((side) => sweep(side, level, plates)) : []),
    ...(strings && rule
      ? [toeByStrings(strings, rule)]
      : tape
        ? axles.map((axle) => toeByTape(axle, tape))
        : []),
  ]
}

const read = (path: string, like: string): AskField => ({ path, text: '', like, kept: false })
const setUp = (path: string, text: string): AskField => ({ path, text, like: text, kept: true })

const height = (wheel: string, rule: string): RoundAsk => ({
  title: `ride height, ${wheel}`,
  kind: 'ride height',
  data: { wheel, when: 'settled', rule, readings: [''] },
  fields: [read('readings[0]', '441 mm')],
})

const camber = (wheel: string, gauge: string): RoundAsk => ({
  title: `camber, ${wheel}`,
  kind: 'reading',
  data: {
    method: 'inclinometer',
    wheel,
    gauge,
    readings: [
      { wheelTurn: '0°', reading: '' },
      { wheelTurn: '180°', reading: '' },
    ],
  },
  fields: [
    read('readings[0].reading', '-0.4°'),
    read('readings[1].reading', '-0.4°'),
    setUp('readings[0].wheelTurn', '0°'),
    setUp('readings[1].wheelTurn', '180°'),
  ],
})

const sweep = (side: string, gauge: string, plates: string | null): RoundAsk => ({
  title: `steer sweep, front ${side}`,
  kind: 'reading',
  data: {
    method: 'steer sweep',
    side,
    gauge,
    ...(plates ? { steerGauge: plates } : {}),
    sweeps: [{ left: { steer: `${sweepTo}°`, camber: '' }, right: { steer: `-${sweepTo}°`, camber: '' } }],
  },
  fields: [
    read('sweeps[0].left.camber', '1.3°'),
    read('sweeps[0].right.camber', '-0.6°'),
    setUp('sweeps[0].left.steer', `${sweepTo}°`),
    setUp('sweeps[0].right.steer', `-${sweepTo}°`),
  ],
})

/** Strings run along the whole vehicle: every wheel is read, whichever axle the job is about. */
function toeByStrings(strings: string, rule: string): RoundAsk {
  const wheels = ['front left', 'front right', 'rear left', 'rear right']
  return {
    title: 'strings and rule',
    kind: 'reading',
    data: {
      method: 'strings and rule',
      rule,
      strings,
      wheels: Object.fromEntries(wheels.map((wheel) => [wheel, { front: [''], rear: [''], span: '' }])),
      hubs: Object.fromEntries(wheels.map((wheel) => [wheel, ''])),
      wheelbase: '',
    },
    fields: [
      ...wheels.flatMap((wheel) => [
        read(`wheels.${wheel}.front[0]`, '112.5 mm'),
        read(`wheels.${wheel}.rear[0]`, '112.5 mm'),
        read(`wheels.${wheel}.span`, '402 mm'),
        read(`hubs.${wheel}`, '91 mm'),
      ]),
      read('wheelbase', '3050 mm'),
    ],
  }
}

const toeByTape = (axle: string, tape: string): RoundAsk => ({
  title: `tape on a scribed line, ${axle}`,
  kind: 'reading',
  data: {
    method: 'tape on a scribed line',
    axle,
    tape,
    front: [''],
    rear: [''],
    belowHub: '0 mm',
    levelled: '2 mm',
    radius: '',
  },
  fields: [
    read('front[0]', '1498 mm'),
    read('rear[0]', '1500 mm'),
    read('radius', '330 mm'),
    setUp('belowHub', '0 mm'),
    setUp('levelled', '2 mm'),
  ],
})
