import type { Look, SeenCorner } from './look.ts'

/** Parts of which each side has its own, whatever the vehicle. */
const ofOneSide: readonly string[] = ['knuckle', 'hub', 'wheel', 'strut', 'top mount']
/** Parts on which everything else stands. */
const ground: readonly string[] = ['body', 'sub-frame']

/** Names that parts hold, and whether something holds each part. */
export function partRefers(look: Look): void {
  const { file, say, mustBe } = look
  for (const [id, part] of Object.entries(file.parts ?? {})) {
    const at = ['parts', id]
    if (!part) continue
    if ('links' in part)
      part.links?.forEach((link, i) => {
        link?.forEach((name, j) => {
          mustBe('point', name, [...at, 'links', i, j])
        })
      })
    for (const member of ['between', 'clippedTo'] as const) {
      const names = (part as { readonly [m in typeof member]?: readonly (string | undefined)[] })[member]
      names?.forEach((name, i) => {
        mustBe('part', name, [...at, member, i])
        if (name === id) say([...at, member, i], `"${id}" cannot stand on itself.`, 'another part')
      })
    }
    if ('ends' in part)
      part.ends?.forEach((name, i) => {
        mustBe('point', name, [...at, 'ends', i])
      })
    if (part.span === 'axle' && part.kind !== undefined && ofOneSide.includes(part.kind))
      say([...at, 'span'], `Each side has its own ${part.kind}.`, 'nothing here, or the kind that is true')
    const carrier = springCarrier(file.layout)
    if (part.kind === 'spring' && carrier && part.between && !part.between.includes(carrier))
      say(
        [...at, 'between'],
        `The layout says "${file.layout}", but this spring does not act on "${carrier}".`,
        `"${carrier}" as one of the two parts, or the layout that is true`,
      )
  }
  partsHeld(look)
}

function springCarrier(layout: SeenCorner['layout']): string | null {
  if (layout === 'double-wishbone, coil on lower arm') return 'lower-arm'
  if (layout === 'double-wishbone, coil on upper arm') return 'upper-arm'
  return null
}

/** Every part is joined to the body, itself or by others; a spring, a damper, a hose or a lead by what it says. */
function partsHeld({ file, known, say }: Look): void {
  const parts = Object.entries(file.parts ?? {})
  if (parts.some(([, part]) => part === undefined)) return
  if (!parts.some(([, part]) => part?.kind === 'body')) {
    say(['parts'], 'No part of it is the body.', 'a part of the kind "body", on which the others stand')
    return
  }
  const beside = new Map<string, string[]>(known.part.map((id) => [id, []]))
  const tie = (a: string | undefined, b: string | undefined) => {
    if (a === undefined || b === undefined) return
    beside.get(a)?.push(b)
    beside.get(b)?.push(a)
  }
  for (const joint of Object.values(file.joints ?? {})) {
    // A joint that was told already may have held anything.
    if (!joint?.joins?.every((name) => name !== undefined && beside.has(name))) return
    tie(joint.joins[0], joint.joins[1])
  }
  for (const [id, part] of parts) {
    if (part && 'between' in part) for (const name of part.between ?? []) tie(id, name)
    if (part && 'clippedTo' in part) for (const name of part.clippedTo ?? []) tie(id, name)
  }
  const held = parts.filter(([, part]) => ground.includes(part?.kind ?? '')).map(([id]) => id)
  for (const id of held) for (const next of beside.get(id) ?? []) if (!held.includes(next)) held.push(next)
  for (const [id] of parts) {
    if (held.includes(id)) continue
    const on = [...new Set(beside.get(id))]
    say(
      ['parts', id],
      on.length === 0
        ? 'Nothing holds this part.'
        : `It hangs on ${on.map((n) => `"${n}"`).join(' and ')} only, and nothing joins that to the body.`,
      'a joint that joins it to a part of the vehicle; else leave it out',
    )
  }
}
