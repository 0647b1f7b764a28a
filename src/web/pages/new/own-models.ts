import type { StartingLayout } from '../../../corner/index.ts'
import type { KeptFile } from '../../keep/keep-messages.ts'

/** Corner models of the workshop, to be chosen like layouts: they come first. */
export const ownModels = (
  files: readonly KeptFile[],
  axle: 'front' | 'rear',
): readonly Pick<StartingLayout, 'id' | 'name' | 'says'>[] =>
  files.flatMap(({ what, id, file }) => {
    const model = file as { readonly name?: string; readonly axle?: string; readonly source?: string }
    if (what !== 'corner' || model.axle !== axle) return []
    return [{ id, name: model.name ?? id, says: `The workshop’s own model. ${model.source ?? ''}` }]
  })
