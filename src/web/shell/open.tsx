import { lazy, StrictMode, Suspense } from 'react'
import { createRoot } from 'react-dom/client'
import { HatchPatterns } from '../drawing/hatch-patterns.tsx'
import { App } from './app.tsx'
import { applyLook, keptLook } from './look.ts'

/** Not needed for the first sheet: it comes once that is drawn. */
const NewerPage = lazy(async () => ({ default: (await import('./newer-page.tsx')).NewerPage }))

/** Puts the page into its element. */
export function open(element: HTMLElement): void {
  applyLook(keptLook())
  createRoot(element).render(
    <StrictMode>
      <HatchPatterns />
      <Suspense>
        <NewerPage />
      </Suspense>
      <App />
    </StrictMode>,
  )
}
