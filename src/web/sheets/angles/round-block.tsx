import { useEffect, useRef } from 'react'
import type { SheetInput } from '../../../sheet/index.ts'
import type { RoundForm } from '../../state/messages.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { fieldWords } from './field-words.ts'
import { ReadingField } from './reading-field.tsx'
import './round-block.css'
import { RoundCheck } from './round-check.tsx'

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
  const turned = job.edits.reduce((count, edit) => (edit.kind === 'turned' ? edit.moves.length : count), 0)
  const words = (entry: number, path: string) =>
    inputs.find((input) => input.entry === entry && input.path === path)?.label ?? fieldWords(path)
  const block = useRef<HTMLElement>(null)
  useEffect(() => {
    block.current?.focus()
    block.current?.scrollIntoView({ block: 'start' })
  }, [])
  return (
    <section className="round" ref={block} tabIndex={-1} aria-label={`Round ${form.number}`}>
      <h2>Round {form.number}: read again</h2>
      <p>
        {turned > 0 ? 'The moves are noted as made. What stands below was read before them. ' : ''}
        Roll the vehicle about 2 m forward and back and jounce it, rear then front, before reading.
      </p>
      <div className="round-gauges">
        {form.observations.map((observation) => (
          <fieldset key={observation.entry} className="round-gauge">
            <legend>{observation.title}</legend>
            <div className="reading-fields">
              {observation.fields.map((field) => (
                <ReadingField
                  key={field.path}
                  input={{ ...field, label: words(field.entry, field.path) }}
                  hand={job.again}
                  before={field.before}
                />
              ))}
            </div>
          </fieldset>
        ))}
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
