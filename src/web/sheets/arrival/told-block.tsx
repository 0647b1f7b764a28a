import { entryOfForm } from '../../state/entry-of-form.ts'
import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import type { ArrivalParts } from './arrival-parts.ts'
import { examples } from './examples.ts'
import { FormBlock } from './form-block.tsx'
import { FormChoice } from './form-choice.tsx'
import { FormField } from './form-field.tsx'
import { useWanted } from './use-wanted.ts'

const tests = ['may be driven', 'yard pace only', 'not to be driven'] as const
const ways = ['in person', 'by telephone', 'in writing'] as const
const yes = 'yes'

/** What is told at the counter: what is wanted, up to which limit, may it be driven; and which vehicle, whose. */
export function ToldBlock({ sheet, job, id, units }: ArrivalParts) {
  const { arrival } = sheet
  const form = useForm(`${id}/arrival`)
  const said = useNote(job)
  const of = arrival?.of ?? null
  const has = (name: string) => arrival?.texts[name] !== undefined
  const chosenTest = form.text('firstTest') || arrival?.texts['firstTest'] || ''
  const chosenWay = form.text('consent.how') || arrival?.texts['consent.how'] || ''
  const [chosen, want] = useWanted(
    sheet.cautions
      .filter(({ words, said: isSaid }) => isSaid || form.text(`caution ${words}`) === yes)
      .map(({ words }) => words),
    sheet,
  )
  const asked = form.text('asked', sheet.complaint).trim()
  const filled = Object.fromEntries(
    Object.entries(form.filled).filter(([name]) => !name.startsWith('caution ') && !has(name)),
  )
  const own = form.text('own caution').trim()
  /** Once the arrival is noted, a touch is a fact. */
  const touch = (label: string, entry: Readonly<Record<string, unknown>>, before: () => void) =>
    of === null ? before() : job.note(label, [entryOfForm({ kind: 'arrival', of, filled: entry })])
  const { 'own caution': _own, ...texts } = filled
  const fresh = of === null ? asked !== '' : Object.keys(filled).length > 0
  const note = () => {
    const entry = entryOfForm({
      kind: 'arrival',
      of,
      filled: {
        ...(has('asked') ? {} : { asked }),
        ...texts,
        ...(own || (of === null && chosen.length > 0)
          ? { cautions: [...chosen, ...(own ? [own] : [])] }
          : {}),
      },
    })
    said.note(of === null ? 'arrival' : 'more of the arrival', [entry], form.clear)
  }
  const shared = { noted: arrival, form, job, said }
  return (
    <FormBlock
      place="arrival-told"
      title="What was told"
      noted={arrival?.words ?? null}
      said={said}
      button={fresh ? (of === null ? 'Note what was told' : 'Note what was added') : null}
      onNote={note}
    >
      <div className="form-fields">
        <FormField
          {...shared}
          name="asked"
          label="What the owner asked for"
          proposed={sheet.complaint}
          long
        />
        <FormField {...shared} name="mileage" label="Mileage" example={examples[units].mileage} />
      </div>
      <FormChoice
        legend="For a first test it"
        words={tests}
        chosen={[chosenTest]}
        onChoose={(word) =>
          touch(`first test: ${word}`, { firstTest: word }, () => form.set('firstTest', word))
        }
      />
      {chosenTest !== '' && chosenTest !== 'may be driven' && (
        <FormField {...shared} name="why" label="Why" example="a wheel bearing is loose" />
      )}
      <fieldset className="form-group">
        <legend>What is agreed</legend>
        <div className="form-fields">
          <FormField {...shared} name="consent.to" label="To what" example="find the knock, then call" />
          <FormField {...shared} name="consent.limit" label="Up to which limit" example="3 hours, or a sum" />
          <FormField {...shared} name="consent.by" label="By whom (a role, no name)" example="fleet office" />
        </div>
        <FormChoice
          legend="How"
          words={ways}
          chosen={[chosenWay]}
          onChoose={(word) =>
            has('consent.to')
              ? job.note(`agreed ${word}`, [
                  entryOfForm({ kind: 'arrival', of, filled: { 'consent.how': word } }),
                ])
              : form.set('consent.how', word)
          }
        />
      </fieldset>
      <fieldset className="form-group">
        <legend>Which vehicle, and whose</legend>
        <div className="form-fields">
          <FormField {...shared} name="vin" label="VIN" hint={sheet.vinHint ?? undefined} />
          <FormField {...shared} name="plate" label="Registration plate" />
          <FormField {...shared} name="owner" label="Owner" />
          <FormField {...shared} name="driver" label="Driver" />
          <FormField {...shared} name="phone" label="Telephone" kind="tel" />
        </div>
        <p className="form-aside">These are kept beside the record, not in it, and can be erased.</p>
      </fieldset>
      <fieldset className="form-group">
        <legend>Cautions of this vehicle</legend>
        <FormChoice
          legend="It has"
          words={sheet.cautions.map(({ words }) => words)}
          chosen={chosen}
          onChoose={(words) => {
            const pressed = chosen.includes(words)
            const next = pressed ? chosen.filter((one) => one !== words) : [...chosen, words]
            if (of === null) form.set(`caution ${words}`, pressed ? '' : yes)
            else {
              want(next)
              job.note(`caution: ${words}`, [
                entryOfForm({ kind: 'arrival', of, filled: { cautions: next } }),
              ])
            }
          }}
        />
        <ul className="form-cautions">
          {sheet.cautions
            .filter(({ words, why }) => why && chosen.includes(words))
            .map(({ words, why }) => (
              <li key={words}>
                <strong>{words}:</strong> {why}
              </li>
            ))}
        </ul>
        <FormField {...shared} noted={null} name="own caution" label="Another caution" />
      </fieldset>
    </FormBlock>
  )
}
