/**
 * Kinds of cause that readings may have, of the vehicle or of the measuring. Each is a family of small displacements of
 * the corner model, or of the way it was read: docs/methods/findings.md.
 *
 * @source own derivation: docs/methods/findings.md
 */
export const suspectKinds = [
  'out of adjustment',
  'bent lower arm',
  'bent upper arm',
  'bent link',
  'bent knuckle',
  'bent strut tube',
  'bent steering arm or tie rod',
  'bent axle or beam',
  'shifted tower',
  'cross-member shifted sideways',
  'cross-member shifted up or down',
  'cross-member turned',
  'sagged spring',
  'collapsed bush',
  'worn ball joint',
  'worn kingpin',
  'loose wheel bearing',
  'bush clamped hanging',
  'eccentric fitted the wrong way round',
  'adjuster slipped or at its stop',
  'wrong part',
  'rack off centre',
  'axle shifted',
  'axle turned',
  'tyre pulls',
  'gauge not zeroed',
  'floor not level',
] as const

/** One of `suspectKinds`. @source definition */
export type SuspectKind = (typeof suspectKinds)[number]
