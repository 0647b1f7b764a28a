import type { Consequence } from './consequence.ts'
import { hasLamp } from './has-lamp.ts'
import type { Work } from './work.ts'

/**
 * What follows from what is undone and replaced: angles to read and set, bushes final at ride height, lines to bleed,
 * lamps to look at, wheels to tighten again, what counts from the angles.
 *
 * @source common practice, no source
 */
export function consequencesOf(work: Work): readonly Consequence[] {
  const { assembly } = work
  const { joints, parts } = assembly
  const opened = [...work.open, ...work.bench].map((id) => joints[id]!)
  const found: Consequence[] = []
  const add = (
    kind: Consequence['kind'],
    axle: Consequence['axle'],
    ids: readonly string[],
    sentence: (names: string) => string,
  ) => {
    if (ids.length === 0) return
    const names = ids.map((id) => (joints[id] ?? parts[id])!.called)
    found.push({ kind, axle, because: ids, sentence: sentence(listed(names)) })
  }
  const off = [...work.off].map((id) => parts[id]!)

  for (const axle of assembly.axles) {
    const here = opened.filter((joint) => joint.axle === axle)
    const adjusters = Object.values(assembly.adjusters).filter((one) => one.axle === axle)
    const disturbed = here.filter((joint) => adjusters.some((one) => one.joints.includes(joint.id)))
    const located = here.filter((joint) => work.open.has(joint.id) && joint.locates)
    const springs = off.filter(
      (part) => part.axle === axle && assembly.holds[part.id] && work.renewed.has(part.id),
    )
    const steered = here.filter((joint) => joint.steers)
    const touched = [
      ...new Set([...disturbed, ...located, ...steered].map(({ id }) => id)),
      ...springs.map(({ id }) => id),
    ]
    add('angles', axle, touched, (names) => `${names}: the ${axle} angles are read, set and proven.`)
    add(
      'clamp pose',
      axle,
      here.filter(({ id, final }) => final === 'at ride height' && work.open.has(id)).map(({ id }) => id),
      (names) => `${names}: final only at ride height.`,
    )
    add(
      'settle again',
      axle,
      springs.map(({ id }) => id),
      (names) => `${names} new: heights and angles again when it has settled.`,
    )
    add(
      'height of a torsion bar',
      axle,
      Object.keys(work.standIns).filter(
        (hold) => work.standIns[hold] === 'torsion bar unwound' && assembly.holds[hold]!.axle === axle,
      ),
      (names) => `${names} unwound: its height is set by the sheet.`,
    )
    if (axle === 'front')
      add(
        'centring',
        axle,
        steered.map(({ id }) => id),
        (names) => `${names}: the steering wheel is centred.`,
      )
    add(
      'electronics',
      axle,
      touched,
      () =>
        'Steering angle zero, camera or radar and headlamps count from the angles: each done, not fitted or sent out.',
    )
  }
  const lines = opened.filter(({ kind }) => kind === 'hydraulic union')
  add(
    'bleed',
    null,
    lines.map(({ id }) => id),
    (names) => `${names} opened: filled and bled, pedal firm, no leak.`,
  )
  add(
    'pump pedal',
    null,
    off.filter(({ kind }) => kind === 'caliper').map(({ id }) => id),
    (names) => `${names} moved: the pedal is pumped firm before the vehicle rolls.`,
  )
  add(
    'lamp',
    null,
    partsTouched(work, 'lead').filter((part) => hasLamp(assembly, part)),
    (names) => `${names} unhooked: the warning lamp is looked at.`,
  )
  add(
    'level sensor',
    null,
    partsTouched(work, 'height-sensor rod'),
    (names) => `${names} unhooked: the level sensor is checked.`,
  )
  add(
    're-tighten',
    null,
    off.filter(({ kind }) => kind === 'wheel').map(({ id }) => id),
    (names) => `${names} off: tightened again after the first distance; a card for the driver.`,
  )
  add(
    'second check',
    null,
    opened.filter(({ red }) => red).map(({ id }) => id),
    (names) => `${names}: a second look, for what it can drop.`,
  )
  return found
}

function partsTouched({ assembly, open, bench }: Work, kind: string): readonly string[] {
  const ids = [...open, ...bench].flatMap((id) => assembly.joints[id]!.joins)
  return [...new Set(ids.filter((part) => assembly.parts[part]!.kind === kind))]
}

function listed(names: readonly string[]): string {
  const text = names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}` : (names[0] ?? '')
  return text.slice(0, 1).toUpperCase() + text.slice(1)
}
