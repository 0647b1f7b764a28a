import type { Assembly } from './assembly.ts'
import type { Choice } from './choice.ts'
import { jointsOf } from './joints-of.ts'

/**
 * The parts that come off as one piece with a part: those joined to it by joints that stay closed on the vehicle.
 *
 * @source definition
 */
export function pieceOf(assembly: Assembly, choice: Choice, from: string): readonly string[] {
  const piece = [from]
  for (const id of piece)
    for (const joint of jointsOf(assembly, id))
      if (!choice.open.has(joint.id))
        for (const one of joint.joins) if (choice.off.has(one) && !piece.includes(one)) piece.push(one)
  return piece
}
