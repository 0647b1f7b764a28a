import type { ComponentType } from 'react'
import { later } from './later.tsx'

const load = () => import('../sheets/bolts/bolt-door.ts')
type Parts = Awaited<ReturnType<typeof load>>

/** The bolt book is another part of the page: it is loaded when it is opened. */
const part = <P,>(pick: (parts: Parts) => ComponentType<P>) =>
  later<P>(async () => ({ default: pick(await load()) }))

/** The bolt book, its next strip, and the screen of one joint. */
export const boltParts = {
  Sheet: part(({ BoltsSheet }) => BoltsSheet),
  Next: part(({ BoltsNext }) => BoltsNext),
  Doing: part(({ DoingStage }) => DoingStage),
}
