import type { ReactNode } from 'react'
import { LookChoice } from '../shell/look-choice.tsx'
import type { PageProps } from '../shell/page-props.ts'
import { UnitsChoice } from '../shell/units-choice.tsx'
import './beside.css'

/** What stands beside the jobs, with its place in the address. */
const places = [
  ['jobs', 'Jobs'],
  ['new', 'New job'],
  ['vehicles', 'Vehicles'],
  ['kit', 'Kit'],
  ['workshop', 'Workshop'],
  ['verify', 'Check a proof'],
] as const

/** The frame of a page that is no job's: a narrow spine of what there is, the page on its paper. */
export function Beside({
  here,
  title,
  page,
  children,
  next,
}: {
  here: string
  title: string
  page: PageProps
  children: ReactNode
  next?: ReactNode
}) {
  return (
    <div className="page">
      <a className="page-skip" href="#sheet">
        To the sheet
      </a>
      <nav className="spine spine-beside" aria-label="Beside the jobs">
        <p className="spine-name">Axlewright</p>
        <ol>
          {places.map(([place, words]) => (
            <li key={place} className={place === here ? 'spine-here' : undefined}>
              <a href={`#/${place}`} aria-current={place === here ? 'page' : undefined}>
                <span className="spine-stage">{words}</span>
              </a>
            </li>
          ))}
        </ol>
      </nav>
      <main className="page-sheet beside" id="sheet" tabIndex={-1}>
        <header className="head head-row">
          <h1>{title}</h1>
          <details className="beside-choices screen-only">
            <summary>Look and units</summary>
            <div className="head-panel">
              <LookChoice />
              <UnitsChoice units={page.units} onChoose={page.onUnits} />
            </div>
          </details>
        </header>
        {children}
      </main>
      {next}
    </div>
  )
}
