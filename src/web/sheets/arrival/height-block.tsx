import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import { Cautions } from '../angles/cautions.tsx'
import type { ArrivalParts } from './arrival-parts.ts'
import { examples } from './examples.ts'
import { FormBlock } from './form-block.tsx'
import { HeightField } from './height-field.tsx'

/** Ride heights before the vehicle is lifted: four fields round the axles, seen from above. */
export function HeightBlock({ sheet, job, id, units }: ArrivalParts) {
  const form = useForm(`${id}/heights`)
  const said = useNote(job)
  const { wheels, rule, heightWhen } = sheet
  const fresh = wheels.filter(({ wheel, height }) => height === null && form.text(wheel).trim() !== '')
  const last = wheels.findLast(({ height }) => height !== null)?.height
  return (
    <FormBlock
      place="arrival-heights"
      title={
        wheels.every(({ height }) => height !== null)
          ? 'Ride heights'
          : heightWhen === 'before lifting'
            ? 'Ride heights, before it is lifted'
            : 'Ride heights, settled'
      }
      noted={last?.words ?? null}
      said={said}
      button={
        fresh.length > 0 ? `Note ${fresh.length === 1 ? 'the height' : `${fresh.length} heights`}` : null
      }
      onNote={() =>
        said.note(
          `ride height, ${fresh.map(({ wheel }) => wheel).join(', ')}`,
          fresh.map(({ wheel }) => ({
            kind: 'ride height',
            data: { wheel, when: heightWhen, rule: rule.id, readings: [form.text(wheel).trim()] },
          })),
          form.clear,
        )
      }
    >
      <Cautions cautions={sheet.standing} title="While heights are read" job={`${id} arrival`} />
      <p className="form-aside">
        From the hub centre straight up to the arch, or as your sheet says, with the {rule.name}: the same way
        at all four.
      </p>
      <div className="height-plan">
        {wheels.map(({ wheel, height }) => (
          <HeightField
            key={wheel}
            wheel={wheel}
            height={height}
            text={form.text(wheel)}
            example={examples[units].height}
            onText={(text) => {
              said.forget()
              form.set(wheel, text)
            }}
            isWrong={said.refusal?.sentence.includes(form.text(wheel).trim() || '\n') ?? false}
            job={job}
          />
        ))}
        <svg className="height-drawing" viewBox="0 0 120 260" aria-hidden="true">
          <path d="M60 34V6M60 6L54 16M60 6L66 16" />
          <path className="height-middle" d="M60 40V236" />
          {[70, 200].map((y) => (
            <g key={y}>
              <path d={`M22 ${y}H98`} />
              <rect x="10" y={y - 22} width="15" height="44" />
              <rect x="95" y={y - 22} width="15" height="44" />
              <path className="height-tick" d={`M0 ${y}H10M110 ${y}H120`} />
            </g>
          ))}
          <path className="height-body" d="M34 44Q60 30 86 44V226Q60 238 34 226Z" />
        </svg>
      </div>
    </FormBlock>
  )
}
