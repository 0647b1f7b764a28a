import type { PartNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'

/** What to mind as a part comes off. @source common practice, no source */
export function takeOffCautions(part: PartNode): readonly string[] {
  return [
    ...(part.kind === 'caliper' ? [say.hose, say.dust] : []),
    ...(part.kind === 'wheel' ? [say.jackAlone] : []),
    ...(part.file.heavy ? [say.heavy] : []),
    ...('stores' in part.file && part.file.stores === 'gas' ? [say.gas] : []),
    ...(part.kind === 'spring' ? [say.letDown] : []),
    ...(part.kind === 'knuckle' ? [say.hose] : []),
  ]
}
