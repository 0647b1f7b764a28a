import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import { FormBlock } from '../arrival/form-block.tsx'
import { FormChoice } from '../arrival/form-choice.tsx'
import { FormField } from '../arrival/form-field.tsx'
import { ClearField } from './clear-field.tsx'
import { FactRow } from './fact-row.tsx'
import type { HandoverParts } from './handover-parts.ts'

const made = ['safe to stand', 'safe to roll'] as const

/** Not road-ready: why, who was told, where the keys are, and how it was made safe. */
export function NotReadyBlock({ sheet, job, id, who }: HandoverParts) {
  const form = useForm(`${id}/not-ready`)
  const said = useNote(job)
  const shared = { noted: null, form, job, said }
  const { reason, told } = form.filled
  const lacks = [
    ...(reason ? [] : ['the reason']),
    ...(told ? [] : ['who was told']),
    ...(who.hand === '' ? ['your initials'] : []),
  ]
  const begun = Object.keys(form.filled).length > 0
  return (
    <FormBlock
      place="handover-not-ready"
      title="Not road-ready"
      noted={sheet.notReady.some(({ done }) => !done) ? 'held' : null}
      unnoted="nothing holds it by hand"
      said={said}
      button={begun && lacks.length === 0 ? 'It stays here: not road-ready' : null}
      onNote={() =>
        said.note(
          'not road-ready',
          [{ kind: 'not road-ready', data: { ...form.filled, hand: who.take() } }],
          form.clear,
        )
      }
    >
      {sheet.notReady.length > 0 && (
        <ul className="handover-facts">
          {sheet.notReady.map((fact) => (
            <FactRow key={fact.noted.entry} fact={fact} state={fact.done ? 'cleared' : 'not road-ready'}>
              {!fact.done && <ClearField fact={fact} job={job} who={who} button="It is road-ready again" />}
            </FactRow>
          ))}
        </ul>
      )}
      <div className="form-fields">
        <FormField
          {...shared}
          name="reason"
          label="Why it must not go on the road"
          example="no arm to be had"
        />
        <FormField {...shared} name="told" label="Who was told (a role, no name)" example="fleet office" />
        <FormField {...shared} name="keys" label="Where the keys are" example="board, hook 4" />
      </div>
      <FormChoice
        legend="It was made"
        words={made}
        chosen={[form.text('made')]}
        onChoose={(word) => form.set('made', form.text('made') === word ? '' : word)}
      />
      {begun && lacks.length > 0 && <p className="form-aside">Still missing: {lacks.join(', ')}.</p>}
    </FormBlock>
  )
}
