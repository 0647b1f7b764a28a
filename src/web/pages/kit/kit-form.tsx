import { useState } from 'react'
import { FileField } from '../files/file-field.tsx'
import { textAt, valueAt } from '../files/in-file.ts'
import { SaveStrip } from '../files/save-strip.tsx'
import { type FileDraft, useFileDraft } from '../files/use-file-draft.ts'
import { gaugeFields, type KitPart, kitParts } from './kit-parts.ts'

/** A kit as it is typed: gauges, wrenches, supports, floors. */
export function KitForm({ start, onSave }: { start: unknown; onSave: (file: unknown) => Promise<boolean> }) {
  const [from] = useState(start)
  const draft = useFileDraft('kit', 'kit', from)
  return (
    <>
      <div className="beside-field">
        <FileField draft={draft} path={['name']} label="What the kit is called" />
        <FileField draft={draft} path={['source']} label="Where the figures come from" />
      </div>
      {kitParts.map((part) => (
        <KitRows key={part.member} draft={draft} part={part} />
      ))}
      <SaveStrip
        draft={draft}
        what="kit"
        trouble={null}
        onSave={async () => {
          if (await onSave(draft.file)) draft.leave()
        }}
      />
    </>
  )
}

function KitRows({ draft, part }: { draft: FileDraft; part: KitPart }) {
  const { member, title, kinds } = part
  const owned = Object.keys((valueAt(draft.file, [member]) ?? {}) as object)
  const add = (kind: string) => {
    let n = owned.length + 1
    while (owned.includes(`${kind.replaceAll(' ', '-')}-${n}`)) n++
    draft.set([member, `${kind.replaceAll(' ', '-')}-${n}`], part.fresh(kind))
  }
  return (
    <details className="file-part" open={member === 'gauges'}>
      <summary>
        <h2>
          {title}: {owned.length}
        </h2>
      </summary>
      {owned.map((id) => (
        <KitRow key={id} draft={draft} part={part} id={id} />
      ))}
      <div className="beside-do">
        {kinds.map((kind) => (
          <button key={kind} type="button" onClick={() => add(kind)}>
            Add: {kind}
          </button>
        ))}
      </div>
    </details>
  )
}

function KitRow({ draft, part, id }: { draft: FileDraft; part: KitPart; id: string }) {
  const at = [part.member, id]
  const kind = textAt(draft.file, [...at, 'kind'])
  const name = textAt(draft.file, [...at, 'name']) || id
  return (
    <div className="kit-row">
      <FileField draft={draft} path={[...at, 'name']} label={kind ? `Name: ${kind}` : 'Name'} />
      {(part.fields ?? gaugeFields[kind] ?? []).map(({ path, label, like }) => (
        <FileField
          key={path.join('.')}
          draft={draft}
          path={[...at, ...path]}
          label={label}
          {...(like ? { like } : {})}
        />
      ))}
      <button type="button" onClick={() => draft.set(at, undefined)}>
        Take out<span className="file-unseen">: {name}</span>
      </button>
    </div>
  )
}
