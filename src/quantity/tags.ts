// SI numbers that remember their unit in the type. Arithmetic drops the tag; it is put back here and nowhere else.

declare const unit: unique symbol
type Tagged<U extends string> = number & { readonly [unit]: U }

/** Length, m. @source definition (SI Brochure, 2.3.1) */
export type Metre = Tagged<'m'>
/** Plane angle, rad. @source definition (SI Brochure, 2.3.4) */
export type Radian = Tagged<'rad'>
/** Torque, N·m. @source definition (SI Brochure, table 5) */
export type NewtonMetre = Tagged<'N·m'>
/** Force, N. @source definition (SI Brochure, table 4) */
export type Newton = Tagged<'N'>
/** Pressure, Pa. @source definition (SI Brochure, table 4) */
export type Pascal = Tagged<'Pa'>
/** Mass, kg. @source definition (SI Brochure, 2.3.1) */
export type Kilogram = Tagged<'kg'>
/** Stiffness of a bush in torsion, N·m/rad. @source definition */
export type NewtonMetrePerRadian = Tagged<'N·m/rad'>
/** Whole and part turns of a thread, 1 = one revolution. @source definition */
export type Turn = Tagged<'turn'>

/** A length in metres. @source definition */
export const metre = (value: number): Metre => value as Metre
/** A length given in millimetres. @source definition */
export const mm = (value: number): Metre => (value / 1000) as Metre
/** A length given in inches; 1 in = 25.4 mm exactly. @source NIST SP 811 (2008), B.8 */
export const inch = (value: number): Metre => (value * 0.0254) as Metre
/** An angle in radians. @source definition */
export const rad = (value: number): Radian => value as Radian
/** An angle given in degrees. @source NIST SP 811 (2008), B.8 */
export const deg = (value: number): Radian => ((value * Math.PI) / 180) as Radian
/** A torque in newton metres. @source definition */
export const Nm = (value: number): NewtonMetre => value as NewtonMetre
/** A force in newtons. @source definition */
export const newton = (value: number): Newton => value as Newton
/** A pressure in pascals. @source definition */
export const pascal = (value: number): Pascal => value as Pascal
/** A mass in kilograms. @source definition */
export const kilogram = (value: number): Kilogram => value as Kilogram
/** A torsional stiffness in newton metres per radian. @source definition */
export const NmPerRad = (value: number): NewtonMetrePerRadian => value as NewtonMetrePerRadian
/** Turns of a thread. @source definition */
export const turn = (value: number): Turn => value as Turn

/** A torque given in pound-force feet. @source NIST SP 811 (2008), B.8 */
export const lbfFt = (value: number): NewtonMetre => (value * 0.45359237 * 9.80665 * 0.3048) as NewtonMetre
/** A torque given in pound-force inches. @source NIST SP 811 (2008), B.8 */
export const lbfIn = (value: number): NewtonMetre => (value * 0.45359237 * 9.80665 * 0.0254) as NewtonMetre

/** Radians as a plain number of degrees, for printing and for files. @source NIST SP 811 (2008), B.8 */
export const inDegrees = (angle: number): number => (angle * 180) / Math.PI
/** Metres as a plain number of millimetres, for printing and for files. @source definition */
export const inMillimetres = (length: number): number => length * 1000
/** Metres as a plain number of inches. @source NIST SP 811 (2008), B.8 */
export const inInches = (length: number): number => length / 0.0254
