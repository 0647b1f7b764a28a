import { useState } from 'react'
import type { HandoverElectronics } from '../../../sheet/index.ts'
import { useNote } from '../../state/use-note.ts'
import { FormBlock } from '../arrival/form-block.tsx'
import type { HandoverParts } from './handover-parts.ts'

const states = ['done', 'not fitted', 'sent out', 'to do'] as const

/** What counts from the geometry: due by what was touched, and done, not fitted or sent out. */
export function ElectronicsBlock({ sheet, job, who }: HandoverParts) {
  const said = useNote(job)
  const note = (row: HandoverElectronics, state: (typeof states)[number], to: string) => {
    const more = { state, ...(to ? { to } : {}), ...(who.hand ? { hand: who.take() } : {}) }
    const { what, noted } = row
    // To do, sent out and done follow each other; only "not fitted" is said over, as a correction.
    const over = noted !== null && (row.state === 'not fitted' || state === 'not fitted')
    said.note(`${what}: ${state}`, [
      over
        ? { kind: 'correction', data: { of: noted.of, data: more } }
        : { kind: 'electronics', data: { what, ...more } },
    ])
  }
  return (
    <FormBlock
      place="handover-electronics"
      title="Electronics that count from the angles"
      noted={null}
      unnoted={
        sheet.electronics.some(({ why, state }) => why && (state === null || state === 'to do'))
          ? 'due'
          : 'nothing due'
      }
      said={said}
      button={null}
      onNote={() => {}}
    >
      <ul className="handover-questions">
        {sheet.electronics.map((row) => (
          <Row key={row.what} row={row} onState={(state, to) => note(row, state, to)} />
        ))}
      </ul>
    </FormBlock>
  )
}

function Row({
  row: { what, why, state, noted },
  onState,
}: {
  row: HandoverElectronics
  onState: (state: (typeof states)[number], to: string) => void
}) {
  const [asks, setAsks] = useState(false)
  const [to, setTo] = useState('')
  return (
    <li>
      <fieldset className="handover-row">
        <legend>
          {what}
          {why && <span className="handover-state"> due</span>}
        </legend>
        <div className="handover-row-body">
          {why && <p className="form-aside">{why}</p>}
          <div className="form-choices">
            {states.map((one) => (
              <button
                key={one}
                type="button"
                aria-pressed={asks ? one === 'sent out' : state === one}
                onClick={() => {
                  setAsks(one === 'sent out')
                  if (one !== 'sent out') onState(one, '')
                }}
              >
                {one}
              </button>
            ))}
          </div>
          {asks && (
            <div className="handover-clear">
              <div className="field">
                <label>
                  To whom: {what}
                  <input value={to} autoComplete="off" onChange={({ target }) => setTo(target.value)} />
                </label>
              </div>
              <button
                type="button"
                onClick={() => {
                  onState('sent out', to.trim())
                  setAsks(false)
                }}
              >
                Sent out
              </button>
            </div>
          )}
          {noted && (
            <p className="form-noted">
              {[noted.texts['to'] && `to ${noted.texts['to']}`, noted.words].filter(Boolean).join(', ')}
            </p>
          )}
        </div>
      </fieldset>
    </li>
  )
}
