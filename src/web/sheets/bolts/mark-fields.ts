/** What a mark is of, in a word; each is one touch. Common practice, no source. */
export const markWords = [
  'mark across both parts',
  'which way round',
  'routing of hose or lead',
  'shims',
  'washer of the adjuster',
] as const

/** What can be said of how a thing was found, with how a figure is written. */
export const markFields: readonly {
  readonly name: string
  readonly label: string
  readonly like?: string
}[] = [
  { name: 'wayRound', label: 'Which way round: what is front, what is outside' },
  { name: 'hole', label: 'Which hole or notch, counted from where' },
  { name: 'shims', label: 'Shims, from the frame outward', like: '1.5 mm; 0.8 mm' },
  { name: 'exposedThread', label: 'Exposed thread', like: '12 mm' },
  { name: 'jointLength', label: 'Joint centre to joint centre, or to the end of the thread', like: '312 mm' },
  { name: 'turns', label: 'Turns to let a torsion bar down', like: '11 turns' },
  { name: 'remark', label: 'Anything else' },
]
