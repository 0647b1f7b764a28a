import type { FilePath } from '../files/in-file.ts'

/** A field of something that is owned. */
interface KitField {
  readonly path: FilePath
  readonly label: string
  readonly like?: string
}

/** One kind of things that a workshop owns. */
export interface KitPart {
  readonly member: 'gauges' | 'wrenches' | 'supports' | 'floors' | 'pullers'
  readonly title: string
  readonly kinds: readonly string[]
  /** The fields of each; null where they differ by kind. */
  readonly fields: readonly KitField[] | null
  readonly fresh: (kind: string) => Readonly<Record<string, unknown>>
}

const field = (path: string, label: string, like: string): KitField => ({ path: [path], label, like })
const calibration: readonly KitField[] = [
  { path: ['calibrated'], label: 'Calibrated on', like: '2026-03-05' },
  { path: ['calibrationDue'], label: 'Calibration counts up to', like: '2027-03-05' },
]
const reading = field('resolution', 'Smallest step that is read', '0.1°')
const placing = field('placing', 'Placing and reading it: at most', '0.1°')

/** What is asked of a gauge, by its kind. */
export const gaugeFields: Readonly<Record<string, readonly KitField[]>> = {
  inclinometer: [
    reading,
    placing,
    field('accuracy', 'The scale’s own error: at most', '0.1°'),
    field('zeroError', 'Zero error that is left: at most', '0.1°'),
    ...calibration,
  ],
  rule: [
    field('resolution', 'Smallest step that is read', '0.5 mm'),
    field('placing', 'Holding and reading: at most', '0.25 mm'),
    field('zeroError', 'Its worn or hooked end: at most', '0.1 mm'),
  ],
  tape: [
    field('resolution', 'Smallest step that is read', '1 mm'),
    field('placing', 'Holding and reading: at most', '0.5 mm'),
    field('accuracy', 'Its own error: at most', '0.05 %'),
  ],
  strings: [
    field('spacing', 'Spacing front against rear: at most', '1 mm'),
    field('length', 'Front bar to rear bar', '4.2 m'),
    field('squareness', 'Bars off square: at most', '0.2°'),
  ],
  'turn plates': [
    field('resolution', 'Smallest step that is read', '0.5°'),
    field('placing', 'Reading it: at most', '0.25°'),
    field('accuracy', 'Of the angle turned: at most', '1 %'),
    field('zeroError', 'Zero against straight ahead: at most', '0.5°'),
  ],
  'dial indicator': [
    field('resolution', 'Smallest step that is read', '0.01 mm'),
    field('placing', 'Setting up and reading: at most', '0.03 mm'),
    field('accuracy', 'Its own error: at most', '0.02 mm'),
    ...calibration,
  ],
}

/** All that can be owned, in the order in which it is asked for. */
export const kitParts: readonly KitPart[] = [
  {
    member: 'gauges',
    title: 'Gauges',
    kinds: Object.keys(gaugeFields),
    fields: null,
    fresh: (kind) => ({ kind, name: kind, ...(kind === 'inclinometer' ? { zeroing: 'by reversal' } : {}) }),
  },
  {
    member: 'wrenches',
    title: 'Torque wrenches',
    kinds: ['clicking', 'dial', 'electronic', 'beam'],
    fields: [
      { path: ['range', 0], label: 'Scale from', like: '60 N·m' },
      { path: ['range', 1], label: 'Scale to', like: '320 N·m' },
      field('resolution', 'One mark of the scale', '1 N·m'),
      field('accuracy', 'Its own error: at most', '4 %'),
      field('lever', 'Drive to the middle of the grip', '560 mm'),
      ...calibration,
    ],
    fresh: (kind) => ({ kind, name: `${kind} wrench`, range: ['', ''] }),
  },
  {
    member: 'supports',
    title: 'What carries the vehicle',
    kinds: ['jack', 'stand', 'lift', 'ramp', 'slip plate'],
    fields: [],
    fresh: (kind) => ({ kind, name: kind }),
  },
  {
    member: 'pullers',
    title: 'Separators and pullers',
    kinds: ['separator', 'puller', 'spring compressor', 'fork'],
    fields: [],
    fresh: (kind) => ({ kind, name: kind }),
  },
  {
    member: 'floors',
    title: 'Floors: heights of the four wheel places over the lowest',
    kinds: ['bay'],
    fields: [
      { path: ['heights', 'front left'], label: 'Front left', like: '0 mm' },
      { path: ['heights', 'front right'], label: 'Front right', like: '3 mm' },
      { path: ['heights', 'rear left'], label: 'Rear left', like: '1.5 mm' },
      { path: ['heights', 'rear right'], label: 'Rear right', like: '4 mm' },
      field('spread', 'Each height: at most off by', '1 mm'),
      field('measured', 'Measured on', '2026-03-05'),
    ],
    fresh: () => ({ name: 'bay', found: 'with a level' }),
  },
]
