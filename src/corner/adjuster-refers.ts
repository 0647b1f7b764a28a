import type { CornerFile } from './corner-schema.ts'
import { familyOf, isWholeAxle } from './layouts.ts'
import { linkBetween } from './link-between.ts'
import type { Look, Path } from './look.ts'
import { linkNames, pointNames } from './point-names.ts'
import type { Seen } from './seen.ts'

type Adjuster = NonNullable<Seen<CornerFile['adjusters'][string]>>
type Kind = CornerFile['adjusters'][string]['kind']

/** Kinds that a layout computed as a whole axle can have. */
const ofWholeAxles: readonly Kind[] = ['thread', 'offset sleeve', 'wedge']

/** What an adjuster moves is there, stands in the body, and belongs to this layout. */
export function adjusterRefers(look: Look): void {
  const { file, say, mustBe } = look
  for (const [id, adjuster] of Object.entries(file.adjusters ?? {})) {
    const at = ['adjusters', id]
    if (!adjuster?.kind) continue
    fitsLayout(look, at, adjuster)
    if (adjuster.kind === 'eccentric' || adjuster.kind === 'top plate')
      bodyPoint(look, adjuster.moves, [...at, 'moves'])
    if (adjuster.kind === 'shims' || adjuster.kind === 'slide' || adjuster.kind === 'sub-frame shift')
      adjuster.moves?.forEach((name, i) => {
        bodyPoint(look, name, [...at, 'moves', i])
      })
    if (adjuster.kind === 'thread') threadRefers(look, at, adjuster)
    if (adjuster.kind === 'slotted bolt') mustBe('point', adjuster.pivot, [...at, 'pivot'])
    const [member, direction] =
      'axis' in adjuster
        ? ['axis', adjuster.axis]
        : ['along', 'along' in adjuster && adjuster.along !== 'y' ? adjuster.along : undefined]
    if (Array.isArray(direction) && direction.every((x) => x === 0))
      say(
        [...at, String(member)],
        'The direction has no length.',
        'three numbers that are not all 0, such as [0, 1, 0]',
      )
  }
}

function bodyPoint({ file, known, say, mustBe }: Look, name: string | undefined, path: Path): void {
  mustBe('point', name, path)
  if (file.layout === undefined || isWholeAxle(file.layout)) return
  if (name === undefined || !known.point.includes(name)) return
  const inside = pointNames[familyOf(file.layout)][name]
  if (inside === undefined || /outer|Outer|strutLower|wheelCentre/.test(inside))
    say(
      path,
      `"${name}" is no point of the linkage that stands in the body.`,
      'an inner pivot or the strut’s top',
    )
}

function fitsLayout({ file, known, say }: Look, at: Path, adjuster: Adjuster): void {
  const { layout } = file
  const kind = adjuster.kind!
  if (layout === undefined) return
  const no = (wrong: string, right: string) => say([...at, 'kind'], wrong, right)
  const another = 'another kind of adjuster, or the layout that is true'
  if (isWholeAxle(layout)) {
    if (!ofWholeAxles.includes(kind))
      no(
        `The layout "${layout}" has no point that an adjuster of the kind “${kind}” could move by itself.`,
        `one of ${ofWholeAxles.map((k) => `"${k}"`).join(', ')}, or the layout that is true`,
      )
  } else if (kind === 'offset sleeve')
    no(`An offset sleeve leans the kingpin of a solid axle; this layout is "${layout}".`, another)
  if (kind === 'offset sleeve' && isWholeAxle(layout) && !known.point.includes('kingpin-lower'))
    no('An offset sleeve leans the kingpin, and this axle has none.', another)
  if (kind === 'top plate' && layout !== 'strut')
    no(`A top plate carries a strut; this layout is "${layout}".`, another)
  if (adjuster.kind === 'top plate' && layout === 'strut' && adjuster.moves && adjuster.moves !== 'strut-top')
    say([...at, 'moves'], `A top plate moves the strut's top, not "${adjuster.moves}".`, '"strut-top"')
}

function threadRefers(
  { file, known, say, mustBe }: Look,
  at: Path,
  adjuster: Extract<Adjuster, { readonly kind?: 'thread' | undefined }>,
): void {
  const { between, span } = adjuster
  const [from, to] = between ?? []
  mustBe('point', from, [...at, 'between', 0])
  mustBe('point', to, [...at, 'between', 1])
  if (file.layout === undefined || !from || !to) return
  const family = familyOf(file.layout)
  const link = linkBetween(family, from, to)
  if (!link) {
    const links = linkNames[family].flatMap(([a, b]) =>
      known.point.includes(a) && known.point.includes(b) ? [`["${a}", "${b}"]`] : [],
    )
    say(
      [...at, 'between'],
      `No link runs between "${from}" and "${to}".`,
      links.length > 0 ? `one of ${links.join(', ')}` : `no thread: this ${family} has no link`,
    )
    return
  }
  const once = family === 'solid axle'
  if (once && span === undefined) say([...at, 'span'], 'It is missing: the axle has this rod once.', '"axle"')
  if (!once && span !== undefined) say([...at, 'span'], 'Each side has this link of its own.', 'nothing here')
}
