import type { PartNode } from './assembly.ts'
import { cautionWords as say } from './caution-words.ts'

/**
 * What to mind as a part comes off. A spring is slack by then, or captured.
 *
 * @param captured it comes off in its compressor
 * @source common practice, no source
 */
export function takeOffCautions(part: PartNode, captured: boolean): readonly string[] {
  return [
    ...(part.kind === 'caliper' ? [say.hose, say.dust] : []),
    ...(part.kind === 'wheel' ? [say.jackAlone] : []),
    ...(part.file.heavy ? [say.heavy] : []),
    ...('stores' in part.file && part.file.stores === 'gas' ? [say.gas] : []),
    ...(captured ? [say.compressor] : []),
    ...(part.kind === 'knuckle' ? [say.hose] : []),
  ]
}
