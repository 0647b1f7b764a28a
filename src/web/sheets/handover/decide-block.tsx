import type { HandoverConflict } from '../../../sheet/index.ts'
import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import { FormBlock } from '../arrival/form-block.tsx'
import { FormField } from '../arrival/form-field.tsx'
import type { HandoverParts } from './handover-parts.ts'

/** What the log says twice: both values, who and when; one touch and a reason settle it. */
export function DecideBlock(parts: HandoverParts) {
  const { conflicts } = parts.sheet
  return conflicts.map((conflict, i) => (
    <Conflict key={conflict.sentence} {...parts} conflict={conflict} first={i === 0} />
  ))
}

function Conflict({
  conflict: { sentence, remedy, values },
  first,
  job,
  id,
  who,
}: HandoverParts & { conflict: HandoverConflict; first: boolean }) {
  const all = values.map(({ of }) => of)
  const form = useForm(`${id}/decide/${sentence}`)
  const said = useNote(job)
  const kept = values[Number(form.text('keep', '-1'))]
  const why = form.text('why').trim()
  const lacks = !kept
    ? 'Choose the one that holds.'
    : why === ''
      ? 'Say why.'
      : who.hand === ''
        ? 'Type your initials above.'
        : ''
  return (
    <FormBlock
      place={first ? 'handover-decide' : `handover-decide-${sentence}`}
      title="Two values: decide"
      noted={null}
      unnoted="not decided"
      said={said}
      button={lacks === '' ? 'This one holds' : null}
      onNote={() =>
        said.note(
          'decision',
          [{ kind: 'decision', data: { of: all, keep: kept!.of, why, hand: who.take() } }],
          form.clear,
        )
      }
    >
      <p className="handover-said">{sentence}</p>
      <fieldset className="form-group">
        <legend>Which one holds?</legend>
        <ul className="handover-values">
          {values.map(({ of, says, words }, i) => (
            <li key={String(of)}>
              <button
                type="button"
                aria-pressed={kept?.of === of}
                onClick={() => form.set('keep', String(i))}
              >
                <strong>{says}</strong>
                <small>{words}</small>
              </button>
            </li>
          ))}
        </ul>
      </fieldset>
      <p className="form-aside">{remedy} The other is set aside and stays in the log.</p>
      <FormField
        name="why"
        label="Why"
        noted={null}
        form={form}
        job={job}
        said={said}
        example="pulled again today"
      />
      {lacks && <p className="form-aside">{lacks}</p>}
    </FormBlock>
  )
}
