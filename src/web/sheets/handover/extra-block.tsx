import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import { FormBlock } from '../arrival/form-block.tsx'
import { FormChoice } from '../arrival/form-choice.tsx'
import { FormField } from '../arrival/form-field.tsx'
import { FactRow } from './fact-row.tsx'
import type { HandoverParts } from './handover-parts.ts'

const answers = ['asked', 'yes', 'no'] as const
const ways = ['in person', 'by telephone', 'in writing'] as const

/** Work beyond what was asked: agreed, asked, or declined with its risk. */
export function ExtraBlock({ sheet, job, id }: HandoverParts) {
  const form = useForm(`${id}/extra`)
  const said = useNote(job)
  const shared = { noted: null, form, job, said }
  const { what, answer } = form.filled
  const waiting = sheet.extra.filter(({ done }) => !done)
  return (
    <FormBlock
      place="handover-extra"
      title="Extra work, and work declined"
      noted={null}
      unnoted={
        waiting.length > 0 ? `${waiting.length} not answered` : sheet.extra.length > 0 ? 'answered' : 'none'
      }
      said={said}
      button={what && answer ? 'Note the answer' : null}
      onNote={() =>
        said.note(`extra work: ${what}`, [{ kind: 'extra work', data: { ...form.filled } }], form.clear)
      }
    >
      {sheet.extra.length > 0 && (
        <ul className="handover-facts">
          {sheet.extra.map((fact) => (
            <FactRow key={fact.noted.entry} fact={fact} state={fact.done ? '' : 'waits'}>
              {!fact.done && (
                <button type="button" onClick={() => form.set('what', fact.what)}>
                  Answer: {fact.what}
                </button>
              )}
            </FactRow>
          ))}
        </ul>
      )}
      <div className="form-fields">
        <FormField {...shared} name="what" label="What" example="rear bushes, both sides" />
        <FormField {...shared} name="why" label="Why it is needed" example="torn through" />
      </div>
      <FormChoice
        legend="The answer"
        words={answers}
        chosen={[answer ?? '']}
        onChoose={(word) => form.set('answer', word)}
      />
      <div className="form-fields">
        <FormField {...shared} name="by" label="Who answered (a role, no name)" example="fleet office" />
        {answer === 'no' && (
          <FormField
            {...shared}
            name="risk"
            label="What was said of leaving it"
            example="the wheel may come loose"
          />
        )}
      </div>
      <FormChoice
        legend="How"
        words={ways}
        chosen={[form.text('how')]}
        onChoose={(word) => form.set('how', form.text('how') === word ? '' : word)}
      />
    </FormBlock>
  )
}
