import { useState } from 'react'
import type { ArrivalWheel } from '../../../sheet/index.ts'
import { entryOfForm } from '../../state/entry-of-form.ts'
import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import type { ArrivalParts } from './arrival-parts.ts'
import { examples } from './examples.ts'
import { FormBlock } from './form-block.tsx'
import { FormChoice } from './form-choice.tsx'
import { FormField } from './form-field.tsx'
import { useWanted } from './use-wanted.ts'
import { WearDrawing } from './wear-drawing.tsx'

const patterns = [
  'even',
  'both shoulders',
  'centre',
  'outer shoulder',
  'inner shoulder',
  'feathered, sharp edge inward',
  'feathered, sharp edge outward',
  'cups',
  'flat spot',
] as const

/** The tyres once round the vehicle: one wheel at a time, the next one open when it is noted. */
export function TyreBlock({ sheet, job, id, units }: ArrivalParts) {
  const first = sheet.wheels.find(({ tyre }) => tyre === null) ?? sheet.wheels[0]!
  const [chosen, setChosen] = useState<string | null>(null)
  const open = sheet.wheels.find(({ wheel }) => wheel === chosen) ?? first
  const alike = sheet.wheels.flatMap(({ tyre }) => tyre?.texts['designation'] ?? []).at(-1)
  return (
    <section className="form-tyres" id="arrival-tyres" aria-label="Tyres" tabIndex={-1}>
      <fieldset className="form-choice">
        <legend className="overline">Tyres, once round the vehicle</legend>
        <div className="form-choices">
          {sheet.wheels.map(({ wheel, tyre }) => (
            <button
              key={wheel}
              type="button"
              aria-pressed={wheel === open.wheel}
              onClick={() => setChosen(wheel)}
            >
              {wheel}
              <small>{tyre ? 'noted' : 'not yet'}</small>
            </button>
          ))}
        </div>
      </fieldset>
      <Tyre
        key={open.wheel}
        at={open}
        sheet={sheet}
        units={units}
        job={job}
        id={id}
        alike={alike}
        onNoted={() => {
          const i = sheet.wheels.indexOf(open)
          const after = [...sheet.wheels.slice(i + 1), ...sheet.wheels.slice(0, i)]
          setChosen(after.find(({ tyre }) => tyre === null)?.wheel ?? open.wheel)
        }}
      />
    </section>
  )
}

function Tyre({
  at: { wheel, tyre },
  sheet,
  units,
  job,
  id,
  alike,
  onNoted,
}: ArrivalParts & {
  at: ArrivalWheel
  /** What stands on the sidewall of another wheel. */
  alike: string | undefined
  onNoted: () => void
}) {
  const form = useForm(`${id}/tyre/${wheel}`)
  const said = useNote(job)
  const [wear, want] = useWanted(
    [
      ...(tyre?.wear ?? []),
      ...patterns.filter((one) => form.text(`wear ${one}`) !== '' && !tyre?.wear.includes(one)),
    ],
    sheet,
  )
  const texts = Object.fromEntries(
    Object.entries(form.filled).filter(
      ([name]) => !name.startsWith('wear ') && tyre?.texts[name] === undefined,
    ),
  )
  const fresh = Object.keys(texts).length > 0 || (tyre === null && wear.length > 0)
  const of = tyre?.of ?? null
  const shared = { noted: tyre, form, job, said }
  const choose = (one: (typeof patterns)[number]) => {
    const pressed = wear.includes(one)
    const next = pressed ? wear.filter((other) => other !== one) : [...wear, one]
    if (of === null) form.set(`wear ${one}`, pressed ? '' : 'yes')
    else {
      want(next)
      job.note(`wear, ${wheel}`, [entryOfForm({ kind: 'tyre', of, filled: { wear: next } })])
    }
  }
  return (
    <FormBlock
      place={`arrival-tyre-${wheel.replace(' ', '-')}`}
      title={`Tyre, ${wheel}`}
      noted={tyre?.words ?? null}
      said={said}
      button={fresh ? `Note the tyre, ${wheel}` : null}
      onNote={() =>
        said.note(
          `tyre, ${wheel}`,
          [
            entryOfForm({
              kind: 'tyre',
              of,
              filled: { ...texts, ...(of === null && wear.length > 0 ? { wear } : {}) },
              with: { wheel },
            }),
          ],
          () => {
            form.clear()
            onNoted()
          },
        )
      }
    >
      <div className="form-fields">
        <FormField {...shared} name="designation" label="Size, from the sidewall" example="215/70R15 109S" />
        <FormField
          {...shared}
          name="pressure"
          label="Pressure as found, cold"
          example={examples[units].pressure}
        />
      </div>
      {alike !== undefined && tyre?.texts['designation'] === undefined && form.text('designation') === '' && (
        <button type="button" className="form-alike" onClick={() => form.set('designation', alike)}>
          The same size: {alike}
        </button>
      )}
      <div className="form-fields form-depths">
        <FormField {...shared} name="depths.outer" label="Depth, outer" example={examples[units].depth} />
        <FormField {...shared} name="depths.middle" label="Depth, middle" example={examples[units].depth} />
        <FormField {...shared} name="depths.inner" label="Depth, inner" example={examples[units].depth} />
      </div>
      <FormChoice
        legend="Worn"
        words={patterns}
        chosen={wear}
        onChoose={choose}
        drawn={(one) => <WearDrawing wear={one} />}
      />
      <FormField {...shared} name="remark" label="Remark" />
    </FormBlock>
  )
}
