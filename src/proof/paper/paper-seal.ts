import type { SealedEntry } from '../../job/index.ts'
import type { ProofVerdict } from '../proof-verdict.ts'
import type { PaperSeal } from './paper.ts'

/**
 * What a verdict says on paper. The code holds the whole id of the sign-off and the root that the log names, so that a
 * copy of the proof file can be held against the paper; it names no address.
 *
 * @param entries of the log, in causal order
 * @param bare how many entries nobody sealed
 * @source own derivation: docs/methods/record.md
 */
export function paperSeal({
  verdict,
  entries,
  root,
  bare,
}: {
  readonly verdict: ProofVerdict
  readonly entries: readonly SealedEntry[]
  readonly root: string | null
  readonly bare: number
}): PaperSeal {
  const { intact, broken, signers, signOffs, backDated } = verdict
  const last = signOffs.at(-1) ?? null
  const id = last ? (entries[last.entry]?.id ?? null) : null
  if (entries.length === 0)
    return {
      head: 'Not sealed: this paper is no proof',
      isGood: false,
      lines: ['Nobody sealed its entries: anybody could have changed them.'],
      fingerprint: null,
      code: null,
    }
  const amiss = [
    ...(intact ? [] : ['it is not intact']),
    ...(bare > 0 ? [`${count(bare, 'entry is', 'entries are')} not sealed`] : []),
    ...(last ? [] : ['it is not signed off']),
    ...(last && last.late.length > 0
      ? [`${count(last.late.length, 'entry is', 'entries are')} not covered`]
      : []),
    ...(last?.state === 'does not come out' ? ['what was signed does not come out again'] : []),
    ...(last && last.filesAmiss.length > 0 ? ['files that were signed are not with it'] : []),
    ...(backDated.length > 0 ? ['a clock in it cannot be right'] : []),
    ...(signers.every(({ hand }) => hand === 'known') ? [] : ['not every hand is known']),
  ]
  return {
    head: amiss.length === 0 ? 'Proven' : `Not proven: ${amiss.join(', ')}`,
    isGood: amiss.length === 0,
    lines: [
      intact
        ? `Intact: nobody changed any of its ${count(entries.length, 'sealed entry', 'sealed entries')}.`
        : `Not intact. ${broken
            .slice(0, 3)
            .map(({ where, sentence }) => `${upper(where)}: ${sentence}`)
            .join(' ')}${broken.length > 3 ? ` And ${broken.length - 3} more.` : ''}`,
      ...signers.map(
        ({ hand, name, fingerprint, entries: n }) =>
          `${upper(hand)} hand${name === null ? '' : ` “${name}”`}: ${fingerprint}, ${count(n, 'entry', 'entries')}.`,
      ),
      verdict.root === null
        ? 'The workshop’s log is not with it, so no hand can be known.'
        : `The workshop’s root: ${verdict.root}${verdict.rootTrusted ? ', the one that is trusted here' : verdict.rootTrusted === null ? '; nobody said whether it is trusted' : ', which is not the one that is trusted'}.`,
      last
        ? `Signed off by ${last.hand}, ${last.at.slice(0, 16).replace('T', ' ')}: ${count(last.covers, 'entry', 'entries')} covered, ${last.late.length === 0 ? 'none left out' : `${last.late.length} not covered`}. ${
            {
              'comes out again': 'What was signed comes out again',
              'does not come out': 'What was signed does not come out again',
              'made by other rules': 'It was made by other rules than this version’s',
            }[last.state]
          } (version ${last.engine}).`
        : 'Not signed off: entries cut off at its end would leave no trace.',
      ...(last && last.filesAmiss.length > 0 ? [`Not with it: ${last.filesAmiss.join(', ')}.`] : []),
      ...(backDated.length > 0
        ? [`Entries whose clock cannot be right: ${backDated.map((at) => at + 1).join(', ')}.`]
        : []),
    ],
    fingerprint: id === null ? null : grouped(id),
    code:
      id === null
        ? null
        : `axlewright/sign-off/1\njob ${verdict.job}\nid ${id}${root === null ? '' : `\nroot ${root}`}`,
  }
}

const count = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`
const upper = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`

/** The first 80 bits of an id, as people compare them. */
const grouped = (id: string): string => id.slice(0, 20).match(/.{5}/g)!.join(' ')
