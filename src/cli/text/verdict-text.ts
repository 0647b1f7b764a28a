import type { SignerVerdict, SignOffVerdict } from '../../proof/index.ts'
import type { Verified } from '../record/verified.ts'

/** What was found of a proof, in plain sentences: intact first, then whose hands, then what is covered. */
export function verdictText({ path, verdict, bare, told, by }: Verified): string {
  const { intact, broken, signers, signOffs, backDated, entries, personal } = verdict
  const head = verdict.job === '' ? path : `${path}: job ${verdict.job} of “${verdict.workshop}”`
  const lines = [
    head,
    ...told,
    ...(intact
      ? entries === 0 && bare > 0
        ? []
        : [`Intact: nobody changed any of its ${count(entries, 'sealed entry', 'sealed entries')}.`]
      : [
          'Not intact:',
          ...broken.slice(0, 10).map(({ where, sentence }) => `  ${where}: ${sentence}`),
          ...(broken.length > 10 ? [`  … and ${broken.length - 10} more.`] : []),
        ]),
    ...(bare > 0
      ? [`${count(bare, 'entry is', 'entries are')} not sealed: nobody signed, anybody could change them.`]
      : []),
    ...(personal.there + personal.erased > 0
      ? [
          `Personal values: ${personal.there} there${personal.erased > 0 ? `, ${personal.erased} erased; that changes nothing that was sealed or signed` : ''}.`,
        ]
      : []),
    ...signers.map(signerLine),
    ...rootLines(verdict.root, verdict.rootTrusted, by, signers.length > 0),
    ...signOffs.flatMap(signOffLines),
    ...(entries > 0 && signOffs.length === 0
      ? ['Not signed off: nothing is covered, and entries cut off at its end would leave no trace.']
      : []),
    ...(backDated.length > 0
      ? [
          `Back-dated: the clock of entry ${places(backDated)} stands before what it follows, so it was written later than it says.`,
        ]
      : []),
  ]
  return `${lines.join('\n')}\n`
}

const count = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`
const places = (list: readonly number[]) =>
  `${list
    .slice(0, 8)
    .map((i) => i + 1)
    .join(', ')}${list.length > 8 ? ` and ${list.length - 8} more` : ''}`

function signerLine({ hand, name, fingerprint, entries }: SignerVerdict): string {
  const called = name === null ? '' : ` “${name}”,`
  const sentence = {
    known: 'Known hand',
    revoked: 'Revoked hand (it was known; when it signed these cannot be proven)',
    unknown: 'Unknown hand',
  }[hand]
  return `${sentence}:${called} ${fingerprint}, signed ${count(entries, 'entry', 'entries')}.`
}

function rootLines(
  root: string | null,
  trusted: boolean | null,
  by: Verified['by'],
  isSigned: boolean,
): readonly string[] {
  if (!isSigned) return []
  if (root === null)
    return [
      'The workshop’s log is not with it, so no hand can be known. A proof file has it: "axlewright prove".',
    ]
  if (by === 'nobody')
    return [
      `It names the root ${root}. If that is the one on the paper, say it: --root "${root}"; until then no hand is known.`,
    ]
  const whose = by === 'named' ? 'the one that you named' : 'that of this device’s workshop'
  return [
    trusted
      ? `The workshop’s root is ${whose}: ${root}.`
      : `It names the root ${root}, which is not ${whose}: whoever wrote it may call themselves anything.`,
  ]
}

function signOffLines({
  entry,
  hand,
  at,
  covers,
  late,
  state,
  filesAmiss,
  engine,
}: SignOffVerdict): readonly string[] {
  const said = {
    'comes out again': `The state that was signed comes out again (worked out by version ${engine}).`,
    'does not come out': `The state that was signed does not come out again (worked out by version ${engine}): do not trust it.`,
    'made by other rules': `The state was made by the rules of version ${engine}; whether it comes out again only that can say.`,
  }[state]
  return [
    `Signed off by ${hand} at ${at} (entry ${entry + 1}): ${count(covers, 'entry', 'entries')} covered, ${late.length === 0 ? 'none left out' : `${count(late.length, 'entry', 'entries')} not covered: ${places(late)}`}.`,
    said,
    ...(filesAmiss.length > 0 ? [`Not with it, or others than were signed: ${filesAmiss.join(', ')}.`] : []),
  ]
}
