import { useEffect, useRef } from 'react'
import type { SheetInput } from '../../../sheet/index.ts'
import type { RoundForm } from '../../state/messages.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { fieldWords } from './field-words.ts'
import './round-block.css'
import { RoundCheck } from './round-check.tsx'
import { RoundGauge } from './round-gauge.tsx'
import { wheelOrder } from './wheel-order.ts'

/** A round that is being read after the moves: the same gauges at the same wheels, with empty fields. */
export function RoundBlock({
  form,
  inputs,
  job,
}: {
  form: RoundForm
  /** Fields of the sheet, for the words that belong to them. */
  inputs: readonly SheetInput[]
  job: OpenJob
}) {
  const { how, setHow } = job
  const isFirst = form.number === 1
  const words = (entry: number, path: string) =>
    inputs.find((input) => input.entry === entry && input.path === path)?.label ?? fieldWords(path)
  const block = useRef<HTMLElement>(null)
  useEffect(() => {
    block.current?.focus()
    block.current?.scrollIntoView({ block: 'start' })
    // When the round is taken or undone, the sheet is read from its top.
    return () => {
      document.getElementById('sheet')?.focus({ preventScroll: true })
      window.scrollTo(0, 0)
    }
  }, [])
  const heights = form.observations
    .filter(({ fields }) => fields.length === 1)
    .sort((a, b) => wheelOrder(a.title) - wheelOrder(b.title))
  const others = form.observations.filter(({ fields }) => fields.length > 1)
  const gauge = (observation: RoundForm['observations'][number]) => (
    <RoundGauge
      key={observation.entry}
      gauge={observation}
      words={({ entry, path }) => words(entry, path)}
      hand={job.again}
    />
  )
  return (
    <section className="round" ref={block} tabIndex={-1} aria-label={`Round ${form.number}`}>
      <h2>{isFirst ? 'First round: as found' : `Round ${form.number}: read again`}</h2>
      <p>
        {job.made ? 'The moves are noted as made. What stands below was read before them. ' : ''}
        Roll the vehicle about 2 m forward and back and jounce it, rear then front, before reading.
      </p>
      <div className="round-gauges">
        {heights.length > 0 && <div className="round-shorts">{heights.map(gauge)}</div>}
        {others.map(gauge)}
      </div>
      <div>
        <RoundCheck checked={how.settled} onChange={(settled) => setHow({ ...how, settled })}>
          Rolled about 2 m and jounced first, or on slip plates
        </RoundCheck>
        <RoundCheck checked={how.proving} onChange={(proving) => setHow({ ...how, proving })}>
          Every bolt and lock nut is final: this round proves the work
        </RoundCheck>
      </div>
    </section>
  )
}
