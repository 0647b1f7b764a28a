import type { Entry } from '../../job/index.ts'
import { inDegrees, inMillimetres } from '../../quantity/index.ts'
import type { Edit } from './messages.ts'

type Turned = Extract<Edit, { kind: 'turned' }>
type Turn = Turned['moves'][number]

/** A rod is turned by the twelfth: two flats of a hexagon make four. */
const twelfth = 12
const plain = (value: number, digits: number) => String(Number(value.toFixed(digits)))

/** Kinds whose setting is an angle, and that which counts turns; any other is a length. */
const angles: readonly string[] = ['eccentric', 'offset sleeve', 'wedge']

function amountOf({ kind, from, to }: Turn): string {
  const by = to - from
  if (angles.includes(kind)) return `${plain(inDegrees(by), 3)}°`
  if (kind !== 'thread') return `${plain(inMillimetres(by), 4)} mm`
  const twelfths = by * twelfth
  return Math.abs(twelfths - Math.round(twelfths)) < 1e-6
    ? `${Math.round(twelfths)}/${twelfth} turn`
    : `${plain(by, 5)} turn`
}

/** The log entries that say that these moves were made. */
export function entriesOfMoves({ at, moves }: Turned): readonly Entry[] {
  return moves.map((move) => ({
    kind: 'moved',
    at,
    data: {
      adjuster: move.adjuster,
      wheel: `${/rear/.test(move.wheel) ? 'rear' : 'front'} ${move.side}`,
      by: amountOf(move),
    },
  }))
}
