// Every unit the trade writes. Built from the few exact definitions below; nothing here is a rounded reciprocal.
// International foot, inch and pound: 1959 agreement, as in NIST SP 811 (2008), B.8 and footnotes 9 and 22.
// Standard gravity: 3rd CGPM (1901), resolution 2. Degree, minute, second: SI Brochure (2019), table 8.

const FOOT = 0.3048
const INCH = 0.0254
const MILE = 1609.344
const POUND = 0.45359237
const GRAVITY = 9.80665
const KILO = 1000
const OUNCES_PER_POUND = 16
const LBF = POUND * GRAVITY

/** What a text can be asked to be. */
export type Kind =
  | 'length'
  | 'distance'
  | 'angle'
  | 'torque'
  | 'force'
  | 'pressure'
  | 'mass'
  | 'turns'
  | 'share'

/** SI = value · times / over. */
export interface Unit {
  readonly symbol: string
  readonly times: number
  readonly over: number
  /** Other ways to write it, in lower case, factors joined by "·"; case is not looked at. */
  readonly names: readonly string[]
  /** Case matters: another unit differs from it by case alone. */
  readonly exactCase?: boolean
}

const unit = (symbol: string, times: number, names: string, over = 1): Unit => ({
  symbol,
  times,
  over,
  names: names.split(' ').filter(Boolean),
})

/** All ways to join two factors, in either order: "ft·lb", "ftlb", "lb·ft", "lbft". */
function products(first: string, second: string): string {
  const all: string[] = []
  for (const a of first.split(' '))
    for (const b of second.split(' ')) all.push(`${a}·${b}`, `${b}·${a}`, a + b, b + a)
  return all.join(' ')
}

const POUNDS = 'lbf lb lbs pound pounds pound-force'
const FEET = 'ft foot feet'
const INCHES = 'in inch inches'

/** The first of each kind is what an example in a sentence is written in. */
export const units: Readonly<Record<Kind, readonly Unit[]>> = {
  length: [
    unit('mm', 1, 'millimetre millimetres millimeter millimeters', KILO),
    unit('cm', 1, 'centimetre centimetres centimeter centimeters', 100),
    unit('m', 1, 'metre metres meter meters'),
    unit('in', INCH, `" ${INCHES}`),
    unit('ft', FOOT, `' ${FEET}`),
    unit('thou', INCH, 'thous', KILO),
    unit('µm', 1, 'um micrometre micrometres micrometer micrometers', KILO * KILO),
  ],
  distance: [
    unit('km', KILO, 'kilometre kilometres kilometer kilometers'),
    unit('mi', MILE, 'mile miles'),
    unit('m', 1, 'metre metres meter meters'),
  ],
  angle: [
    unit('°', Math.PI, 'deg degs degree degrees', 180),
    unit('′', Math.PI, "' min mins minute minutes arcmin", 180 * 60),
    unit('″', Math.PI, '" sec secs second seconds arcsec', 180 * 60 * 60),
    unit('rad', 1, 'radian radians'),
    unit('mrad', 1, 'milliradian milliradians', KILO),
  ],
  torque: [
    unit('N·m', 1, `${products('n newton newtons', 'm metre metres meter meters')}`),
    unit('lbf·ft', LBF * FOOT, products(POUNDS, FEET)),
    unit('lbf·in', LBF * INCH, products(POUNDS, INCHES)),
    unit('ozf·in', (LBF * INCH) / OUNCES_PER_POUND, products('ozf oz ounce ounces ounce-force', INCHES)),
    unit('kgf·m', GRAVITY, products('kgf kg kp', 'm')),
    unit('kgf·cm', GRAVITY, products('kgf kg kp', 'cm'), 100),
    unit('N·mm', 1, products('n', 'mm'), KILO),
  ],
  force: [
    unit('N', 1, 'newton newtons'),
    unit('kN', KILO, 'kilonewton kilonewtons'),
    unit('lbf', LBF, 'pound-force pounds-force pound·force pounds·force'),
    unit('kgf', GRAVITY, 'kp kilogram·force kilopond'),
  ],
  pressure: [
    unit('kPa', KILO, 'kilopascal kilopascals'),
    unit('bar', 100 * KILO, 'bars'),
    unit('psi', LBF / (INCH * INCH), 'lb/in² lbf/in² lbs/in²'),
    { ...unit('MPa', KILO * KILO, ''), exactCase: true },
    unit('ksi', (KILO * LBF) / (INCH * INCH), ''),
    unit('kgf/cm²', GRAVITY * 100 * 100, 'kg/cm² kp/cm²'),
    unit('N/mm²', KILO * KILO, ''),
    unit('Pa', 1, 'pascal pascals'),
  ],
  mass: [
    unit('kg', 1, 'kgs kilo kilos kilogram kilograms'),
    unit('lb', POUND, 'lbs pound pounds'),
    unit('g', 1, 'gram grams', KILO),
    unit('oz', POUND, 'ounce ounces', OUNCES_PER_POUND),
  ],
  turns: [unit('turn', 1, 'turns rev revs revolution revolutions')],
  share: [unit('%', 1, 'percent per·cent', 100)],
}

/** Units that follow one another in one quantity, larger first: 5' 3", 0°15′30″, 1 turn 2 flats. */
export const chains: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  length: ['ft', 'in'],
  angle: ['°', '′', '″'],
  turns: ['turn', 'flat'],
}

/** The kind as it stands in a sentence. */
export const kindNouns: Readonly<Record<Kind, string>> = {
  length: 'a length',
  distance: 'a distance',
  angle: 'an angle',
  torque: 'a torque',
  force: 'a force',
  pressure: 'a pressure',
  mass: 'a mass',
  turns: 'a number of turns',
  share: 'a percentage',
}
