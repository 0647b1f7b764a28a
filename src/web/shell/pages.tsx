import type { ComponentType } from 'react'
import { later } from './later.tsx'
import type { PageProps } from './page-props.ts'

type Page = ComponentType<PageProps>

/** Pages that stand beside the jobs, each loaded when it is opened. No job is ever called so. */
const pages: Readonly<Record<string, Page>> = {
  jobs: later(async () => ({ default: (await import('../pages/jobs/jobs-page.tsx')).JobsPage })),
  new: later(async () => ({ default: (await import('../pages/new/new-job-page.tsx')).NewJobPage })),
  kit: later(async () => ({ default: (await import('../pages/kit/kit-page.tsx')).KitPage })),
  values: later(async () => ({ default: (await import('../pages/values/values-page.tsx')).ValuesPage })),
  verify: later(async () => ({ default: (await import('../pages/verify/verify-page.tsx')).VerifyPage })),
  vehicles: later(async () => ({
    default: (await import('../pages/vehicles/vehicles-page.tsx')).VehiclesPage,
  })),
  workshop: later(async () => ({
    default: (await import('../pages/workshop/workshop-page.tsx')).WorkshopPage,
  })),
}

/** The page of a name; null where it names a job. */
export const pageNamed = (name: string): Page | null => (Object.hasOwn(pages, name) ? pages[name]! : null)
