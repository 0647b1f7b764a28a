import { useState } from 'react'
import type { Units } from '../../state/messages.ts'
import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import { examples } from '../arrival/examples.ts'
import { FormBlock } from '../arrival/form-block.tsx'
import { FormChoice } from '../arrival/form-choice.tsx'
import { FormField } from '../arrival/form-field.tsx'
import { ClearField } from './clear-field.tsx'
import { DriverCard } from './driver-card.tsx'
import { FactRow } from './fact-row.tsx'
import type { HandoverParts } from './handover-parts.ts'
import { printOnly } from './print-only.ts'

const kinds = ['wheel nuts again', 'grease', 'heights and angles again', 'look again', 'other'] as const

/** Follow-ups: proposed by what was done, agreed by one touch; a card for whoever drives. */
export function FollowUpBlock({ sheet, job, id, who, units }: HandoverParts & { units: Units }) {
  const form = useForm(`${id}/follow-up`)
  const said = useNote(job)
  const [own, setOwn] = useState(false)
  const shared = { noted: null, form, job, said }
  const { what, after, on } = form.filled
  const open = sheet.followUps.filter(({ done }) => !done)
  return (
    <FormBlock
      place="handover-follow-ups"
      title="Follow-ups"
      noted={open.length > 0 ? `${open.length} agreed` : null}
      unnoted="none agreed"
      said={said}
      button={own && what && (after || on) ? 'Agree it' : null}
      onNote={() =>
        said.note(`follow-up: ${what}`, [{ kind: 'follow-up', data: { ...form.filled } }], () => {
          form.clear()
          setOwn(false)
        })
      }
    >
      {sheet.proposals.map(({ what: proposed, why, wheels, choices }) => (
        <fieldset key={proposed} className="form-choice">
          <legend>
            {proposed}
            {wheels.length > 0 ? `, ${wheels.join(', ')}` : ''}
          </legend>
          <p className="form-aside">{why}</p>
          <div className="form-choices">
            {choices.map(({ words, ...when }) => (
              <button
                key={words}
                type="button"
                onClick={() =>
                  said.note(`follow-up: ${proposed}, ${words}`, [
                    {
                      kind: 'follow-up',
                      data: { what: proposed, ...when, ...(wheels.length > 0 ? { wheels } : {}) },
                    },
                  ])
                }
              >
                {words}
              </button>
            ))}
          </div>
        </fieldset>
      ))}
      {sheet.followUps.length > 0 && (
        <ul className="handover-facts">
          {sheet.followUps.map((fact) => (
            <FactRow key={fact.noted.entry} fact={fact} state={fact.done ? 'done' : fact.when}>
              {!fact.done && fact.what === 'wheel nuts again' && !fact.card && (
                <button
                  type="button"
                  onClick={() =>
                    job.note('card handed over', [
                      { kind: 'correction', data: { of: fact.noted.of, data: { card: true } } },
                    ])
                  }
                >
                  The driver has the card
                </button>
              )}
              {!fact.done && <ClearField fact={fact} job={job} who={who} button="Done" />}
            </FactRow>
          ))}
        </ul>
      )}
      <div className="beside-do handover-do">
        {open.length > 0 && (
          <button type="button" onClick={() => printOnly('card')}>
            Print the driver’s card
          </button>
        )}
        {!own && (
          <button type="button" onClick={() => setOwn(true)}>
            Another follow-up
          </button>
        )}
      </div>
      {own && (
        <>
          <FormChoice
            legend="What"
            words={kinds}
            chosen={[what ?? '']}
            onChoose={(word) => form.set('what', word)}
          />
          <div className="form-fields">
            <FormField {...shared} name="after" label="After a distance" example={examples[units].after} />
            <FormField {...shared} name="on" label="Or on a day" example="2026-03-24" />
            <FormField {...shared} name="remark" label="Remark" />
          </div>
        </>
      )}
      <DriverCard sheet={sheet} />
    </FormBlock>
  )
}
