import { useId, useState } from 'react'
import type { SheetBolt } from '../../../sheet/index.ts'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { Plain } from '../../state/messages.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { useNote } from '../../state/use-note.ts'
import { withUnit } from '../../state/with-unit.ts'
import { ClockFace } from './clock-face.tsx'
import './marks.css'
import { AskBar } from './ask-bar.tsx'
import { markFields, markWords } from './mark-fields.ts'
import { upper } from './upper.ts'

/** Notes how a joint is before it is disturbed: where its mark stands, which way round, shims, lengths, a photo. */
export function MarkAsked({ bolt, job, onBack }: { bolt: SheetBolt; job: OpenJob; onBack: () => void }) {
  const id = useId()
  const note = useNote(job)
  const [what, setWhat] = useState<string>(bolt.adjuster ? markWords.at(-1)! : markWords[0]!)
  const [clock, setClock] = useState<string | null>(null)
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({})
  const [body, setBody] = useState(false)
  const [photo, setPhoto] = useState<{ hash: string; bytes: Uint8Array<ArrayBuffer> } | null>(null)
  const [trouble, setTrouble] = useState<Plain | null>(null)
  const said = Object.entries(texts).filter(([, text]) => text.trim() !== '')
  const ready = clock !== null || said.length > 0 || body || photo !== null
  const take = async (file: File) => {
    setTrouble(null)
    try {
      const { scaledPhoto } = await import('../../state/scaled-photo.ts')
      const { bytes } = await scaledPhoto(file)
      const { hash } = await askKeeper('keepPhoto', { job: job.row?.id ?? '', bytes })
      setPhoto({ hash, bytes })
    } catch (why) {
      setTrouble(why as Plain)
    }
  }
  const data = (): Readonly<Record<string, unknown>> => {
    const member = Object.fromEntries(
      said.map(([name, text]) => {
        const { like } = markFields.find((field) => field.name === name)!
        return [name, like ? withUnit(text.trim(), like) : text.trim()]
      }),
    )
    const { shims, ...others } = member
    return {
      what,
      wheel: bolt.named,
      joint: bolt.joint,
      ...(clock === null ? {} : { clock: clock.endsWith(':00') ? `${clock.slice(0, -3)} o'clock` : clock }),
      ...others,
      ...(shims === undefined
        ? {}
        : { shims: [{ at: 'this bolt', thicknesses: shims.split(/\s*[;,]\s+|\s*;\s*/) }] }),
      ...(body ? { bodySideToo: true } : {}),
      ...(photo ? { photo: photo.hash } : {}),
    }
  }
  return (
    <main className="hand" aria-label="How it is">
      <form
        className="hand-form mark-form"
        onSubmit={(event) => {
          event.preventDefault()
          if (ready && !note.busy) note.note(`mark, ${bolt.name}`, [{ kind: 'mark', data: data() }], onBack)
        }}
      >
        <h1>How it is now</h1>
        <p>
          {upper(bolt.name)}, {bolt.wheel}. Note it before it is disturbed; it is shown here again when it
          goes back.
        </p>
        <div className="mark-words">
          {markWords.map((words) => (
            <button key={words} type="button" aria-pressed={what === words} onClick={() => setWhat(words)}>
              {words}
            </button>
          ))}
        </div>
        <ClockFace value={clock} onChoose={setClock} />
        {markFields.map(({ name, label, like }) => (
          <div key={name}>
            <label htmlFor={`${id}-${name}`}>{label}</label>
            <input
              id={`${id}-${name}`}
              type="text"
              value={texts[name] ?? ''}
              placeholder={like && `as ${like}`}
              autoComplete="off"
              autoCapitalize="none"
              aria-invalid={note.refusal?.field.startsWith(name) ?? false}
              onChange={(event) => setTexts({ ...texts, [name]: event.target.value })}
            />
          </div>
        ))}
        <label className="mark-check">
          <input type="checkbox" checked={body} onChange={(event) => setBody(event.target.checked)} />
          Marked on the body side too, since the part is replaced
        </label>
        {job.row?.kept && (
          <div>
            <label htmlFor={`${id}-photo`}>A photo: its place and time are taken off it</label>
            <input
              id={`${id}-photo`}
              type="file"
              accept="image/*"
              capture="environment"
              onChange={({ target }) => {
                const [file] = target.files ?? []
                if (file) void take(file)
              }}
            />
            {photo && <p role="status">The photo is kept with this mark.</p>}
          </div>
        )}
        {(note.refusal ?? trouble) && (
          <p className="doing-blocked" role="alert">
            {(note.refusal ?? trouble)!.sentence} {(note.refusal ?? trouble)!.remedy}
          </p>
        )}
        <AskBar isReady={ready} on="Note it" lacks="Say how it is" onBack={onBack} />
      </form>
    </main>
  )
}
