import { inch, type Kilogram, type Metre, metre, mm } from '../quantity/index.ts'
import { loadOfIndex } from './load-index.ts'
import { specRefusal } from './spec-refusal.ts'
import { speedOfSymbol } from './speed-symbol.ts'

/** A tyre's designation, taken apart. @source ISO 4000-1 (designation) */
export interface Tyre {
  readonly text: string
  /** P passenger, LT light truck, T spare of North American marking; C behind the rim: commercial. */
  readonly service: 'P' | 'LT' | 'T' | 'C' | null
  readonly width: Metre
  /** Section height by width. */
  readonly aspect: number
  readonly construction: 'radial' | 'bias-belted' | 'diagonal'
  readonly rim: Metre
  readonly load: {
    readonly single: number
    /** As a twin, where it is marked. */
    readonly twin: number | null
    readonly singleMass: Kilogram
    readonly twinMass: Kilogram | null
  } | null
  /** km/h; ZR alone says no more than "above 240". */
  readonly speed: { readonly symbol: string; readonly kmh: number } | null
  readonly aboveSpeed240: boolean
  readonly reinforced: boolean
  readonly loadRange: string | null
  readonly sectionHeight: Metre
  /** Design overall diameter of the new tyre. */
  readonly diameter: Metre
}

const form =
  /^(P|LT|T)? ?(\d{3}) ?\/ ?(\d{2,3}) ?(Z?R|B|D|-) ?(\d{2}(?:\.5)?) ?(C)?(?: ?\(? ?(\d{2,3})(?: ?\/ ?(\d{2,3}))? ?([A-Z]) ?\)?)?(?: (XL|EXTRA LOAD|REINFORCED|REINF))?(?: ?(?:LOAD RANGE |LR)?([B-H]))?(?: M\+S)?$/

/**
 * A metric tyre designation: "215/70R15 109S", "P215/65R17 98T", "LT245/75R16 120/116Q", "215/70 R 15 C 109/107 S".
 *
 *     height = width · aspect        diameter = rim + 2 · height
 *
 * @param text letters in any case; spaces as they come
 * @throws {Refusal} `not-a-tyre`; `unknown-load-index`
 * @assumes the design diameter of a new tyre; it may differ by some 1 %, wear and load take more
 * @source ISO 4000-1, designation (D = d + 2 H, H = 0.01 S Ra); ETRTO metric designation
 * @example inMillimetres(parseTyre('205/55R16 91V').diameter) // 631.9
 */
export function parseTyre(text: string): Tyre {
  const plain = text.trim().replace(/\s+/g, ' ').toUpperCase()
  const parts = form.exec(plain)
  const wrong = (sentence: string) =>
    specRefusal({
      code: 'not-a-tyre',
      at: 'tyre',
      given: text,
      sentence,
      remedy:
        'Write it as on the sidewall: width/height, R, rim, load index and speed, such as 215/70R15 109S.',
    })
  if (!parts) throw wrong(`“${text}” is no metric tyre designation.`)
  const [, prefix, width, aspect, build, rim, commercial, single, twin, symbol, reinforced, range] = parts
  const [wide, share, seat] = [Number(width), Number(aspect), Number(rim)]
  if (wide < 105 || wide > 455 || share < 20 || share > 105 || seat < 10 || seat > 26)
    throw wrong(`No tyre is “${text}”: a width, a height or a rim is out of the ordinary.`)
  const speed = symbol === undefined ? null : speedOfSymbol(symbol)
  if (symbol !== undefined && speed === null) throw wrong(`“${symbol}” is no speed symbol.`)
  const sectionHeight = mm((wide * share) / 100)
  return {
    text,
    service: (prefix ?? commercial ?? null) as Tyre['service'],
    width: mm(wide),
    aspect: share / 100,
    construction: build === 'B' ? 'bias-belted' : build === 'D' || build === '-' ? 'diagonal' : 'radial',
    rim: inch(seat),
    load:
      single === undefined
        ? null
        : {
            single: Number(single),
            twin: twin === undefined ? null : Number(twin),
            singleMass: loadOfIndex(Number(single)),
            twinMass: twin === undefined ? null : loadOfIndex(Number(twin)),
          },
    speed: symbol === undefined ? null : { symbol, kmh: speed! },
    aboveSpeed240: build === 'ZR',
    reinforced: reinforced !== undefined,
    loadRange: range ?? null,
    sectionHeight,
    diameter: metre(inch(seat) + 2 * sectionHeight),
  }
}
