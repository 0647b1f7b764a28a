/** Digits by the spread (half-width, SI), or by an explicit number of decimals of the printed unit. @source definition */
export interface DecimalStyle<U extends string> {
  readonly unit: U
  /** Half-width in SI; decides the digits when it is there. */
  readonly spread?: number | undefined
  /** Decimals of the printed unit; needed where there is no spread. */
  readonly digits?: number | undefined
  /** Print "+" before what is above zero. */
  readonly sign?: boolean | undefined
}

/** A fraction to the nearest of some denominators. @source definition */
export interface FractionStyle<U extends string> {
  readonly unit: U
  readonly denominators?: readonly number[] | undefined
  readonly sign?: boolean | undefined
}

/** Units a length is printed in. @source definition */
export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft' | 'thou' | 'µm'
/** Units an angle is printed in; °′ is degrees and minutes. @source definition */
export type AngleUnit = '°' | '°′' | '′' | 'rad' | 'mrad'
/** Units a torque is printed in. @source definition */
export type TorqueUnit = 'N·m' | 'lbf·ft' | 'lbf·in' | 'ozf·in' | 'kgf·m' | 'kgf·cm'
/** Units a force is printed in. @source definition */
export type ForceUnit = 'N' | 'kN' | 'lbf' | 'kgf'
/** Units a pressure is printed in. @source definition */
export type PressureUnit = 'kPa' | 'bar' | 'psi' | 'MPa' | 'ksi'
/** Units a mass is printed in. @source definition */
export type MassUnit = 'kg' | 'lb'
/** Units a distance is printed in. @source definition */
export type DistanceUnit = 'km' | 'mi' | 'm'
/** Units of a bush's stiffness in torsion. @source definition */
export type StiffnessUnit = 'N·m/°' | 'N·m/rad' | 'lbf·in/°'
