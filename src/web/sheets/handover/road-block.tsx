import type { HandoverQuestion } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { addressOf } from '../../state/use-address.ts'
import { useForm } from '../../state/use-form.ts'
import { useNote } from '../../state/use-note.ts'
import { FormBlock } from '../arrival/form-block.tsx'
import { FormField } from '../arrival/form-field.tsx'
import type { HandoverParts } from './handover-parts.ts'

const answers = ['yes', 'no', 'could not tell'] as const
const stageWords = { refit: 'To the bolt book', angles: 'To the angles' } as const

/** What holds it from its first drive, what is looked at before it rolls, and what is felt on the road. */
export function RoadBlock({ sheet, job, id, who }: HandoverParts) {
  const form = useForm(`${id}/road`)
  const said = useNote(job)
  const all = [...sheet.standing, ...sheet.road]
  const given = all.flatMap(({ question }) => {
    const answer = form.text(`? ${question}`)
    return answer ? [{ question, answer }] : []
  })
  // What is said of the pedal is a fact of its own: it holds the vehicle back, or lets it go.
  const pedal = given.flatMap(({ question, answer }) =>
    answer !== 'could not tell' && all.some((one) => one.question === question && one.tells === 'pedal')
      ? [answer === 'yes']
      : [],
  )
  const onRoad = sheet.road.some(({ question }) => form.text(`? ${question}`) !== '')
  const remark = form.text('remark').trim()
  const stages = (['refit', 'angles'] as const).filter((one) =>
    sheet.holds.some(({ stage }) => stage === one),
  )
  const rows = (questions: readonly HandoverQuestion[]) => (
    <ul className="handover-questions">
      {questions.map(({ question, answer }) => {
        const now = form.text(`? ${question}`) || answer
        return (
          <li key={question}>
            <fieldset className="handover-row">
              <legend>{question}</legend>
              <div className="form-choices handover-row-body">
                {answers.map((one) => (
                  <button
                    key={one}
                    type="button"
                    aria-pressed={now === one}
                    onClick={() => form.set(`? ${question}`, one)}
                  >
                    {one}
                  </button>
                ))}
              </div>
            </fieldset>
          </li>
        )
      })}
    </ul>
  )
  return (
    <FormBlock
      place="handover-road"
      title="Road test"
      noted={
        sheet.roadTest ? `${sheet.roadTest.driven ? 'driven' : 'not driven'}, ${sheet.roadTest.words}` : null
      }
      unnoted="not driven yet"
      said={said}
      button={
        given.length > 0
          ? `Note ${given.length} ${given.length === 1 ? 'answer' : 'answers'}: ${onRoad ? 'driven' : 'not driven yet'}`
          : null
      }
      onNote={() => {
        const hand = who.hand ? { hand: who.take() } : {}
        said.note(
          'road test',
          [
            {
              kind: 'road test',
              data: {
                when: 'after the work',
                driven: onRoad,
                answers: given,
                ...(remark ? { remark } : {}),
                ...hand,
              },
            },
            ...pedal.map((firm) => ({ kind: 'pedal', data: { firm, ...hand } })),
          ],
          form.clear,
        )
      }}
    >
      {sheet.holds.length > 0 && (
        <section className="handover-holds" id="handover-drive" aria-label="Not to be driven yet">
          <h3>Not to be driven yet</h3>
          <ul>
            {sheet.holds.map(({ sentence }) => (
              <li key={sentence}>{glued(sentence)}</li>
            ))}
          </ul>
          <p>
            {stages.map((stage) => (
              <a key={stage} href={addressOf(id, stage)}>
                {stageWords[stage]}
              </a>
            ))}
          </p>
        </section>
      )}
      {sheet.firstTest && <p className="form-aside">When it came: {sheet.firstTest}.</p>}
      <h3>While it stands</h3>
      {rows(sheet.standing)}
      <h3>On the road</h3>
      {rows(sheet.road)}
      <FormField name="remark" label="Remark" noted={null} form={form} job={job} said={said} />
    </FormBlock>
  )
}
