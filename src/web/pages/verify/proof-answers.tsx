import type { ReactNode } from 'react'
import { VerdictMark } from '../../drawing/verdict-mark.tsx'
import type { VerifySays } from '../../state/verify-messages.ts'

type Said = Extract<VerifySays, { kind: 'verdict' }>

/** How many broken places are told; who has more needs another copy, not a list. */
const most = 8

/** What can be said of a proof: three answers that do not depend on each other. */
export function ProofAnswers({ name, says: { verdict, by } }: { name: string; says: Said }) {
  const { signers, signOffs, broken, entries } = verdict
  const last = signOffs.at(-1)
  const known = signers.length > 0 && signers.every(({ hand }) => hand === 'known')
  const covered = last !== undefined && last.late.length === 0 && last.state === 'comes out again'
  return (
    <section className="proof-answers" aria-label="What was found">
      <h2>
        {name}
        {verdict.job && `: job ${verdict.job} of “${verdict.workshop}”`}
      </h2>
      <Answer is={verdict.intact} title={verdict.intact ? 'Intact' : 'Not intact'}>
        {verdict.intact ? (
          <p>Nobody changed any of its {count(entries, 'entry', 'entries')}.</p>
        ) : (
          <ul>
            {broken.slice(0, most).map(({ where, sentence }) => (
              <li key={`${where} ${sentence}`}>
                {where}: {sentence}
              </li>
            ))}
            {broken.length > most && <li>and {broken.length - most} more places</li>}
          </ul>
        )}
        {verdict.backDated.length > 0 && (
          <p>
            Back-dated: the clock of entry {verdict.backDated.map((i) => i + 1).join(', ')} stands before what
            it follows, so it was written later than it says.
          </p>
        )}
        {verdict.personal.erased > 0 && (
          <p>
            {count(verdict.personal.erased, 'personal value was', 'personal values were')} erased; that
            changes nothing that was sealed.
          </p>
        )}
      </Answer>
      <Answer is={known} title={known ? 'Signed by a known hand' : 'Hands that are not known'}>
        <ul>
          {signers.map((signer) => (
            <li key={signer.key}>
              {signer.name ? `“${signer.name}”, ` : ''}
              <span className="figure-number">{signer.fingerprint}</span>: {handWords[signer.hand]},{' '}
              {count(signer.entries, 'entry', 'entries')}
            </li>
          ))}
        </ul>
        <p>{rootWords(verdict.root, verdict.rootTrusted, by)}</p>
      </Answer>
      <Answer is={covered} title={last ? 'Signed off' : 'Not signed off'}>
        {last ? (
          <p>
            By {last.hand}, {last.at}: {count(last.covers, 'entry', 'entries')} covered,{' '}
            {last.late.length === 0 ? 'none left out' : `${last.late.length} not covered`}.{' '}
            {stateWords[last.state]}
            {last.filesAmiss.length > 0 &&
              ` Not with it, or others than were signed: ${last.filesAmiss.join(', ')}.`}
          </p>
        ) : (
          <p>Nothing is covered: entries cut off at its end would leave no trace.</p>
        )}
      </Answer>
    </section>
  )
}

const count = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`

const handWords = {
  known: 'known',
  revoked: 'revoked: it was known, and when it signed these cannot be proven',
  unknown: 'unknown',
} as const

const stateWords = {
  'comes out again': 'What was signed comes out again when it is worked out here.',
  'does not come out': 'What was signed does not come out again when it is worked out here: do not trust it.',
  'made by other rules':
    'It was worked out by another version’s rules; only that one can say whether it comes out.',
} as const

function rootWords(root: string | null, trusted: boolean | null, by: Said['by']): string {
  if (root === null) return 'The workshop’s log is not with it, so no hand can be known.'
  if (by === 'nobody')
    return `It names the root ${root}. If that stands on the paper that you trust, type it above: until then no hand is known.`
  const whose = by === 'named' ? 'the one that you typed' : 'that of this device’s workshop'
  return trusted
    ? `The workshop’s root is ${whose}: ${root}.`
    : `It names the root ${root}, which is not ${whose}: whoever wrote it may call themselves anything.`
}

function Answer({ is, title, children }: { is: boolean; title: string; children: ReactNode }) {
  return (
    <div className="proof-answer">
      <VerdictMark verdict={is ? 'inside' : 'outside'} size={28} />
      <div>
        <h3>{title}</h3>
        {children}
      </div>
    </div>
  )
}
