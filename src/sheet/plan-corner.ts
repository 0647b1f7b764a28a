import type { Corner } from '../corner/index.ts'
import type { Spec } from '../spec/index.ts'

/**
 * A corner model with what the workshop's sheet says of its joints laid over it: the position in which each is made
 * final, and a second check that it asks for. Where the sheet is silent the model stands.
 *
 * @source definition
 */
export function planCorner(corner: Corner, spec: Spec | null): Corner {
  const said = spec?.tightening?.[corner.axle] ?? {}
  const joints = Object.entries(corner.joints).map(([name, joint]) => {
    const tightening = said[name]
    if (!tightening) return [name, joint] as const
    const { position, secondCheck } = tightening
    const more = { ...(position && { final: position }), ...(secondCheck && { red: true as const }) }
    return [name, { ...joint, ...more }] as const
  })
  return { ...corner, joints: Object.fromEntries(joints) }
}
