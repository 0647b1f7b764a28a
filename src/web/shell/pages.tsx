import type { ComponentType } from 'react'
import type { Units } from '../state/messages.ts'
import type { Address } from '../state/use-address.ts'
import type { KeptRows } from '../state/use-kept-rows.ts'
import { later } from './later.tsx'

/** What a page that stands beside the jobs is given. */
export interface PageProps {
  readonly address: Address
  readonly go: (...parts: readonly string[]) => void
  readonly kept: KeptRows
  readonly units: Units
  readonly onUnits: (units: Units) => void
}

type Page = ComponentType<PageProps>

/** Pages that stand beside the jobs, each loaded when it is opened. No job is ever called so. */
const pages: Readonly<Record<string, Page>> = {
  jobs: later(async () => ({ default: (await import('../pages/jobs/jobs-page.tsx')).JobsPage })),
  new: later(async () => ({ default: (await import('../pages/new/new-job-page.tsx')).NewJobPage })),
  kit: later(async () => ({ default: (await import('../pages/kit/kit-page.tsx')).KitPage })),
  values: later(async () => ({ default: (await import('../pages/values/values-page.tsx')).ValuesPage })),
  verify: later(async () => ({ default: (await import('../pages/verify/verify-page.tsx')).VerifyPage })),
  workshop: later(async () => ({
    default: (await import('../pages/workshop/workshop-page.tsx')).WorkshopPage,
  })),
}

/** The page of a name; null where it names a job. */
export const pageNamed = (name: string): Page | null => (Object.hasOwn(pages, name) ? pages[name]! : null)
