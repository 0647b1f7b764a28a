import type { CornerPoints, Point } from '../../linkage/index.ts'
import { deg, metre } from '../../quantity/index.ts'
import { badInput } from './row-refusal.ts'

/** An eccentric of the exchange file: throw and unit slot. */
export interface ExchangeEccentric {
  readonly e: number
  readonly slot: Point
}

/** A geometry of the exchange file, read. */
export interface ExchangeGeometry {
  readonly points: CornerPoints
  readonly adjusters: { readonly front: ExchangeEccentric; readonly rear: ExchangeEccentric } | null
}

type Plain = Readonly<Record<string, unknown>>

/** How far a slot's length may be from 1: the rounding of six digits. */
const slotRounding = 1e-6

const pointNames = {
  double_wishbone: [
    'upper_front_inner',
    'upper_rear_inner',
    'upper_outer',
    'lower_front_inner',
    'lower_rear_inner',
    'lower_outer',
    'tie_inner',
    'tie_outer',
  ],
  strut: [
    'lower_front_inner',
    'lower_rear_inner',
    'lower_outer',
    'top_mount',
    'strut_lower',
    'tie_inner',
    'tie_outer',
  ],
  five_link: [],
} as const
const layouts = { double_wishbone: 'double wishbone', strut: 'strut', five_link: 'five-link' } as const

/** Whether a value is a plain object. */
export const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** "upper_front_inner" → "upperFrontInner". */
const camel = (name: string): string => name.replace(/_(\w)/g, (_, letter: string) => letter.toUpperCase())

/** The geometry of the exchange file as points; the shape is checked here, what the points mean in `mechanism`. */
export function readGeometry(value: unknown): ExchangeGeometry {
  if (!isPlain(value)) throw badInput('geometry', 'There is no geometry.', 'Give the points of the corner.')
  const type = value['type']
  if (typeof type !== 'string' || !Object.hasOwn(layouts, type))
    throw badInput(
      'geometry.type',
      `"${String(type)}" is no type of corner that is known here.`,
      `Use one of: ${Object.keys(layouts).join(', ')}.`,
    )
  const kind = type as keyof typeof layouts
  const points: Record<string, unknown> = { layout: layouts[kind] }
  for (const name of pointNames[kind]) points[camel(name)] = readPoint(value[name], name)
  if (kind === 'five_link') points['links'] = readLinks(value['links'])
  points['wheelCentre'] = readPoint(value['wheel_center'], 'wheel_center')
  points['camber'] = deg(readNumber(value['camber_deg'], 'camber_deg'))
  points['toe'] = deg(readNumber(value['toe_deg'], 'toe_deg'))
  points['tyreRadius'] = metre(readNumber(value['tyre_radius'], 'tyre_radius'))
  const adjusters = value['adjusters']
  return {
    points: points as unknown as CornerPoints,
    adjusters: adjusters === undefined || adjusters === null ? null : readAdjusters(adjusters),
  }
}

/** A number, or `bad-input`. */
export function readNumber(value: unknown, at: string): number {
  if (typeof value === 'number') return value
  throw badInput(
    at,
    value === undefined ? `${at} is missing.` : `${at} is ${JSON.stringify(value)}, not a number.`,
    'Give a number.',
  )
}

function readPoint(value: unknown, at: string): Point {
  if (Array.isArray(value) && value.length === 3 && value.every((n) => typeof n === 'number'))
    return [value[0], value[1], value[2]]
  throw badInput(
    at,
    value === undefined ? `The point ${at} is missing.` : `The point ${at} is not three numbers.`,
    'Give x, y and z in metres.',
  )
}

function readLinks(value: unknown): unknown[] {
  if (!Array.isArray(value) || value.length !== 5)
    throw badInput(
      'links',
      `A five-link corner has five links; ${Array.isArray(value) ? value.length : 'none'} given.`,
      'Give all five.',
    )
  return value.map((link: unknown, i) => {
    if (!isPlain(link))
      throw badInput(`links.${i}`, `Link ${i} is missing.`, 'Give its inner and outer point.')
    const rack = link['rack'] ?? false
    if (typeof rack !== 'boolean')
      throw badInput(`links.${i}.rack`, `"rack" of link ${i} is not true or false.`, 'Give true or false.')
    return {
      inner: readPoint(link['inner'], `links.${i}.inner`),
      outer: readPoint(link['outer'], `links.${i}.outer`),
      rack,
    }
  })
}

function readAdjusters(value: unknown): ExchangeGeometry['adjusters'] {
  if (!isPlain(value)) throw badInput('adjusters', 'The adjusters are not readable.', 'Give front and rear.')
  const one = (end: 'front' | 'rear'): ExchangeEccentric => {
    const given = value[end]
    if (!isPlain(given))
      throw badInput(`adjusters.${end}`, `The ${end} adjuster is missing.`, 'Give its throw and slot.')
    const slot = readPoint(given['slot'], `adjusters.${end}.slot`)
    const size = Math.hypot(...slot)
    if (Math.abs(size - 1) > slotRounding)
      throw badInput(
        `adjusters.${end}.slot`,
        `The slot of the ${end} adjuster has length ${size}, not 1, so it gives no direction of known size.`,
        'Give a unit vector along the slot.',
      )
    return { e: readNumber(given['e'], `adjusters.${end}.e`), slot }
  }
  return { front: one('front'), rear: one('rear') }
}
