import { type ReactNode, useId } from 'react'
import type { FindingsGroup, FindingsSuspect } from '../../../sheet/index.ts'
import { glued } from '../../drawing/glued.ts'
import { upper } from '../bolts/upper.ts'
import { Belief } from './belief.tsx'

/** What these readings cannot tell apart: one sentence, its belief, and behind a touch each one's evidence. */
export function FindingGroup({
  group,
  open,
  onOpen,
  drawn,
}: {
  group: FindingsGroup
  open: string | null
  onOpen: (id: string | null) => void
  /** The suspect on its corner; null where it stands elsewhere. */
  drawn: (suspect: FindingsSuspect) => ReactNode
}) {
  const { suspects, separate, alike } = group
  return (
    <li className="finding">
      <Belief belief={group.belief} text={group.beliefText} />
      <p className="finding-sentence">{glued(group.sentence)}</p>
      {alike.length > 0 && (
        <p className="finding-alike">
          <strong>Nearly the same would be read with:</strong> {glued(alike.join('; '))}.
        </p>
      )}
      {separate && (
        <p className="finding-separate">
          <strong>
            To tell them apart: {lowered(separate.what)}, {separate.where}
          </strong>{' '}
          ({separate.minutes} min). {glued(separate.hold)}
        </p>
      )}
      <ul className="suspects">
        {suspects.map((suspect) => (
          <Suspect
            key={suspect.id}
            suspect={suspect}
            alone={suspects.length === 1}
            open={open === suspect.id}
            onOpen={() => onOpen(open === suspect.id ? null : suspect.id)}
            drawn={drawn}
          />
        ))}
      </ul>
    </li>
  )
}

function Suspect({
  suspect,
  alone,
  open,
  onOpen,
  drawn,
}: {
  suspect: FindingsSuspect
  alone: boolean
  open: boolean
  onOpen: () => void
  drawn: (suspect: FindingsSuspect) => ReactNode
}) {
  const more = useId()
  const { words, beliefText, speaksFor, speaksAgainst, proof } = suspect
  const nothing = speaksFor.length + speaksAgainst.length === 0
  return (
    <li className={open ? 'suspect suspect-here' : 'suspect'} data-suspect={suspect.id}>
      <button
        type="button"
        className="suspect-open"
        aria-expanded={open}
        aria-controls={more}
        onClick={onOpen}
      >
        <span className="suspect-words">
          {alone ? 'What speaks for it, and against' : glued(upper(words))}
        </span>
        {!alone && <span className="figure-number suspect-belief">{beliefText}</span>}
      </button>
      <div id={more} className="suspect-more" hidden={!open}>
        <dl>
          {speaksFor.length > 0 && <Evidence term="For" sentences={speaksFor} />}
          {speaksAgainst.length > 0 && <Evidence term="Against" sentences={speaksAgainst} />}
          {nothing && (
            <Evidence term="For" sentences={['Nothing that was read speaks for it more than for others.']} />
          )}
          {proof && <Evidence term="Proof by hand" sentences={[proof]} />}
        </dl>
        {open && drawn(suspect)}
      </div>
    </li>
  )
}

const Evidence = ({ term, sentences }: { term: string; sentences: readonly string[] }) => (
  <>
    <dt>{term}</dt>
    <dd>
      <ul>
        {sentences.map((one) => (
          <li key={one}>{glued(one)}</li>
        ))}
      </ul>
    </dd>
  </>
)

const lowered = (words: string) => `${words.charAt(0).toLowerCase()}${words.slice(1)}`
