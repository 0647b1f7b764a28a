import type { AxleName } from './assembly.ts'
import type { Work } from './work.ts'

/**
 * The height at which bush bolts are final: with springs renewed or a torsion bar reset the sheet's, else the one
 * recorded before lifting.
 *
 * @source own derivation: docs/methods/clamp-pose.md
 */
export function targetOf(
  { assembly, renewed, standIns }: Work,
  axle: AxleName,
): 'the sheet' | 'height before lifting' {
  const reset = Object.values(assembly.holds).some(
    (hold) => hold.axle === axle && (renewed.has(hold.id) || standIns[hold.id] === 'torsion bar unwound'),
  )
  return reset ? 'the sheet' : 'height before lifting'
}
