import { entryOfForm } from '../../state/entry-of-form.ts'
import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import type { ArrivalParts } from './arrival-parts.ts'
import { examples } from './examples.ts'
import { FormBlock } from './form-block.tsx'
import { FormField } from './form-field.tsx'

/** The pressures as they were set, front and rear. */
export function PressureBlock({ sheet, job, id, units }: ArrivalParts) {
  const { pressures } = sheet
  const form = useForm(`${id}/pressures`)
  const said = useNote(job)
  const shared = { noted: pressures, form, job, said }
  return (
    <FormBlock
      place="arrival-pressures"
      title="Pressures as set"
      noted={pressures?.words ?? null}
      said={said}
      button={!pressures && Object.keys(form.filled).length > 0 ? 'Note the pressures' : null}
      onNote={() =>
        said.note(
          'set pressures',
          [entryOfForm({ kind: 'set pressures', of: null, filled: form.filled })],
          form.clear,
        )
      }
    >
      <p className="form-aside">
        Cold, to the sheet or the plate on the vehicle, before heights are measured.
      </p>
      <div className="form-fields">
        <FormField {...shared} name="front" label="Front" example={examples[units].pressure} />
        <FormField {...shared} name="rear" label="Rear" example={examples[units].rear} />
      </div>
    </FormBlock>
  )
}
