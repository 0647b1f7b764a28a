const arms: readonly (readonly [RegExp, (...found: string[]) => string])[] = [
  [/^(upper|lower)(Front|Rear)Inner$/, (arm, end) => `the ${arm} ${end!.toLowerCase()} pivot`],
  [/^(upper|lower)(Front|Rear)$/, (arm, end) => `the ${end!.toLowerCase()} leg of the ${arm} arm`],
  [/^(inner|outer)(\d)$/, (end, i) => `the ${end} end of link ${Number(i) + 1}`],
  [/^links?\.?(\d)\.(inner|outer)$/, (i, end) => `the ${end} end of link ${Number(i) + 1}`],
  [/^links?\.?(\d)\.rack$/, (i) => `what the rack moves at link ${Number(i) + 1}`],
  [/^links?\.?(\d)$/, (i) => `link ${Number(i) + 1}`],
  [
    /^(roll|drop|idler)Axis\.(\d)$/,
    (name, i) => `the ${i === '0' ? 'first' : 'second'} point of ${others[`${name}Axis`]}`,
  ],
  [/^inner(Front|Rear)$/, (end) => `the ${end!.toLowerCase()} bush of the arm`],
  [/^eye(Front|Rear)$/, (end) => `the ${end!.toLowerCase()} eye of the arm`],
]

const others: Readonly<Record<string, string>> = {
  upperOuter: 'the upper ball joint',
  lowerOuter: 'the lower ball joint',
  tie: 'the tie rod',
  tieInner: 'the inner end of the tie rod',
  tieOuter: 'the outer end of the tie rod',
  tieLeft: 'the left end of the tie rod',
  tieRight: 'the right end of the tie rod',
  topMount: 'the top mount of the strut',
  strutTop: 'the upper point of the strut',
  strutLower: 'the lower point of the strut',
  wheelCentre: 'the wheel centre',
  tyreRadius: 'the tyre radius',
  spin: 'the tilt of the wheel on its knuckle',
  rollAxis: 'the roll axis',
  kingpin: 'the kingpin',
  'kingpin.lower': 'the lower end of the kingpin',
  'kingpin.upper': 'the upper end of the kingpin',
  dropAxis: 'the axis of the drop arm',
  dropJoint: 'the joint of the drop arm',
  idlerAxis: 'the axis of the idler',
  idlerJoint: 'the joint of the idler',
  dragInner: 'the inner end of the drag link',
  dragOuter: 'the outer end of the drag link',
  dragLink: 'the drag link',
  tieRod: 'the tie rod',
  drop: 'the drop arm',
  shearCentre: 'the effective point of the cross beam',
}

/** What only groups other places in the data; nobody says it. */
const unsaid = /^(body|knuckle|length|location|steering|settings)$/
const coordinates = ['x', 'y', 'z']
const bare = (name: string): string => name.replace(/^the /, '')

/**
 * A place in a corner's or axle's data as people say it: `body.upperFrontInner.1` is "the upper front pivot (y)". A
 * place that has no such words is left as it is.
 */
export function spokenPlace(at: string): string {
  const parts = at.split('.').filter((part) => !unsaid.test(part))
  const last = parts.at(-1) ?? ''
  const isCoordinate = /^[0-2]$/.test(last) && parts.length > 1 && wordsFor(parts.join('.')) === null
  const name = isCoordinate ? parts.slice(0, -1) : parts
  const sides = name.filter((part) => part === 'left' || part === 'right')
  const rest = name.filter((part) => part !== 'left' && part !== 'right').join('.')
  const words = wordsFor(rest) ?? (/^\w+$/.test(rest) ? rest : null)
  if (words === null) return at
  const sided = sides.length === 0 ? words : `the ${sides[0]} ${bare(words)}`
  return isCoordinate ? `${sided} (${coordinates[Number(last)]})` : sided
}

function wordsFor(name: string): string | null {
  if (Object.hasOwn(others, name)) return others[name]!
  for (const [shape, words] of arms) {
    const found = shape.exec(name)
    if (found) return words(...found.slice(1))
  }
  return null
}
