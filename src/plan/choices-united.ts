import type { Choice } from './choice.ts'

/** Two choices as one; what one of them opens on the vehicle is open there. @source definition */
export const choicesUnited = (a: Choice, b: Choice): Choice => {
  const open = new Set([...a.open, ...b.open])
  return {
    open,
    bench: new Set([...a.bench, ...b.bench].filter((id) => !open.has(id))),
    off: new Set([...a.off, ...b.off]),
    standIns: { ...a.standIns, ...b.standIns },
    letDown: new Set([...a.letDown, ...b.letDown]),
    raised: new Set([...a.raised, ...b.raised]),
    why: { ...b.why, ...a.why },
  }
}
