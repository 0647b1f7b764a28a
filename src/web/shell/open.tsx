import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { HatchPatterns } from '../drawing/hatch-patterns.tsx'
import { App } from './app.tsx'
import { applyLook, keptLook } from './look.ts'

/** Puts the page into its element. */
export function open(element: HTMLElement): void {
  applyLook(keptLook())
  createRoot(element).render(
    <StrictMode>
      <HatchPatterns />
      <App />
    </StrictMode>,
  )
}
