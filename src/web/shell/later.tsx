import { type ComponentType, type LazyExoticComponent, lazy } from 'react'
import { NotLoaded } from './not-loaded.tsx'

/** Another part of the page, loaded when it is opened; where the network does not bring it, it says so. */
export const later = <P,>(
  load: () => Promise<{ default: ComponentType<P> }>,
): LazyExoticComponent<ComponentType<P>> =>
  lazy<ComponentType<P>>(() =>
    load().catch((): { default: ComponentType<P> } => ({ default: NotLoaded as ComponentType<P> })),
  )
