import { Suspense } from 'react'
import { firstJob } from '../state/demo-jobs.ts'
import { useAddress } from '../state/use-address.ts'
import { useKeptRows } from '../state/use-kept-rows.ts'
import { useUnits } from '../state/use-units.ts'
import './app.css'
import { JobPage } from './job-page.tsx'
import { pageNamed } from './pages.tsx'

/** What the address names: a job at one of its stages, or a page that stands beside the jobs. */
export function App() {
  const [address, go] = useAddress()
  const [units, chooseUnits] = useUnits()
  const kept = useKeptRows()
  const wait = <p className="page-wait page-alone">One moment …</p>
  // Whoever has jobs begins with them, whoever has none with one to look at.
  if (address.job === '' && kept.rows === null) return wait
  const named = address.job === '' && kept.rows?.length ? 'jobs' : address.job
  const Page = pageNamed(named)
  if (Page)
    return (
      <Suspense fallback={wait}>
        <Page address={address} go={go} kept={kept} units={units} onUnits={chooseUnits} />
      </Suspense>
    )
  const id = named || firstJob
  return <JobPage id={id} address={address} go={go} kept={kept} units={units} onUnits={chooseUnits} />
}
