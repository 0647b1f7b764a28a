import {
  type Assembly,
  type Failure,
  type FailureKind,
  failureKinds,
  failureRungs,
  type Rung,
} from '../../plan/index.ts'
import { BadInput } from '../files/outcome.ts'
import { planIds } from './plan-ids.ts'

/**
 * What a person says went wrong, "JOINT: rounded head", as failures; after a comma what was tried in vain, and what the
 * boss of a taper is made of. Everything that is not understood is told at once.
 */
export function planFailures(assembly: Assembly, given: readonly string[]): readonly Failure[] {
  const wrong: string[] = []
  const found = given.flatMap((text): readonly Failure[] => {
    const [, name = '', rest = ''] = /^\s*(.+?)\s*:\s*(.+?)\s*$/.exec(text) ?? []
    const [said = '', ...more] = rest.split(/\s*,\s*/)
    const what = failureKinds.find((kind) => kind === said.toLowerCase())
    if (!what) {
      wrong.push(
        `--failed “${text}”: write a joint or a part, a colon and what went wrong: ${failureKinds.join(', ')}.`,
      )
      return []
    }
    const tried = more.filter((one): one is Rung => Object.hasOwn(failureRungs, one))
    const boss = more.flatMap((one): ('steel' | 'aluminium')[] => {
      const [, metal] = /^(steel|aluminium) boss$/.exec(one) ?? []
      return metal === 'steel' || metal === 'aluminium' ? [metal] : []
    })[0]
    const odd = more.filter(
      (one) => !Object.hasOwn(failureRungs, one) && !/^(steel|aluminium) boss$/.test(one),
    )
    if (odd.length > 0)
      wrong.push(
        `--failed “${text}”: “${odd.join('”, “')}” is no way that could have been tried. Known are ${Object.keys(failureRungs).join(', ')}; and “steel boss” or “aluminium boss”.`,
      )
    try {
      return [
        {
          what,
          ...placeOf(assembly, name, what),
          ...(tried.length > 0 ? { tried } : {}),
          ...(boss ? { boss } : {}),
        },
      ]
    } catch (error) {
      if (!(error instanceof BadInput)) throw error
      wrong.push(...error.lines)
      return []
    }
  })
  if (wrong.length > 0) throw new BadInput(wrong)
  return found
}

/** A joint where there is one of that name, else a part; what is in a box is a part. */
function placeOf(
  { joints, parts }: Assembly,
  name: string,
  what: FailureKind,
): Pick<Failure, 'joint' | 'part'> {
  if (what === 'wrong part in the box') return { part: planIds(parts, [name], 'part')[0]! }
  try {
    return { joint: planIds(joints, [name], 'joint')[0]! }
  } catch (error) {
    if (!(error instanceof BadInput)) throw error
    try {
      return { part: planIds(parts, [name], 'part')[0]! }
    } catch {
      throw error
    }
  }
}
