import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import { FormBlock } from '../arrival/form-block.tsx'
import { FormField } from '../arrival/form-field.tsx'
import type { HandoverParts } from './handover-parts.ts'

/** Hours, and the parts that were fitted with their lots. */
export function PartsBlock({ sheet, job, id }: HandoverParts) {
  const form = useForm(`${id}/hours`)
  const said = useNote(job)
  const hours = form.text('text').trim()
  return (
    <FormBlock
      place="handover-parts"
      title="Hours and parts"
      noted={sheet.hours.length > 0 ? `hours: ${sheet.hours.join('; ')}` : null}
      unnoted="no hours noted"
      said={said}
      button={hours ? 'Note the hours' : null}
      onNote={() =>
        said.note('hours', [{ kind: 'note', data: { text: `Hours worked: ${hours}` } }], form.clear)
      }
    >
      {sheet.parts.length > 0 ? (
        <ul className="handover-lines">
          {sheet.parts.map(({ what, words }) => (
            <li key={what + words}>
              <strong>{what}:</strong> {words}
            </li>
          ))}
        </ul>
      ) : (
        <p className="form-aside">No part was noted as fitted.</p>
      )}
      {sheet.days && <p className="form-aside">Worked on: {sheet.days}.</p>}
      <FormField
        name="text"
        label="Hours worked"
        noted={null}
        form={form}
        job={job}
        said={said}
        example="3.5 h, KB"
      />
    </FormBlock>
  )
}
