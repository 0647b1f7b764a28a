import { type ComponentType, lazy } from 'react'
import { NotLoaded } from './not-loaded.tsx'

const load = () => import('../sheets/bolts/bolt-door.ts')
type Parts = Awaited<ReturnType<typeof load>>

/** The bolt book is another part of the page: it is loaded when it is opened. */
const part = <P,>(pick: (parts: Parts) => ComponentType<P>) =>
  lazy(() =>
    load().then(
      (parts) => ({ default: pick(parts) }),
      () => ({ default: NotLoaded as ComponentType<P> }),
    ),
  )

/** The bolt book, its next strip, and the screen of one joint. */
export const boltParts = {
  Sheet: part(({ BoltsSheet }) => BoltsSheet),
  Next: part(({ BoltsNext }) => BoltsNext),
  Doing: part(({ DoingStage }) => DoingStage),
}
