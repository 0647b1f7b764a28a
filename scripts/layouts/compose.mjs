// Puts a corner model together out of pieces: a wheel, a brake, a hub, an arm. Each piece has points, parts,
// joints, adjusters and holds; a name that two pieces give is a fault.

const members = ['points', 'parts', 'joints', 'adjusters', 'holds']

/** Points from millimetres: forward, left, up. They are typical, so each has a spread. */
export function points(places, spread = 12) {
  return {
    points: Object.fromEntries(
      Object.entries(places).map(([name, at]) => [
        name,
        { at: at.map((x) => `${x} mm`), spread: `${name === 'wheel-centre' ? 10 : spread} mm` },
      ]),
    ),
  }
}

/** One joint: its kind, the two parts, and what else is to be said of it. */
export const joint = (kind, joins, more = {}) => ({ kind, joins, ...more })

/** A bonded rubber pivot, final at ride height. */
export const bonded = (stiffness) => ({
  bush: { bonded: true, stiffness: `${stiffness} N·m/°`, stiffnessSpread: '40 %' },
  final: 'at ride height',
})

/** A corner model out of its head and its pieces, in their order. */
export function compose(head, ...pieces) {
  const whole = Object.fromEntries(members.map((member) => [member, {}]))
  for (const piece of pieces)
    for (const [member, entries] of Object.entries(piece)) {
      if (!members.includes(member)) throw new Error(`${head.id}: a piece has "${member}".`)
      for (const [name, value] of Object.entries(entries)) {
        if (name in whole[member]) throw new Error(`${head.id}: ${member}.${name} is given twice.`)
        whole[member][name] = value
      }
    }
  return {
    format: 1,
    kind: 'corner',
    id: head.id,
    name: head.name,
    source: 'invented: typical, not measured; points within the spread given, no value of any maker',
    layout: head.layout,
    axle: head.axle,
    drawn: 'left',
    wheel: head.wheel,
    travel: head.travel ?? { droop: '80 mm', bump: '75 mm' },
    wheelRate: { rate: head.wheelRate, spread: '30 %' },
    ...(head.beamShape === undefined ? {} : { beamShape: head.beamShape }),
    ...whole,
  }
}
