import { Refusal } from '../../quantity/index.ts'

/** Why a photo is not taken. @source definition */
export type PhotoRefusal = 'no-photo' | 'cut-photo' | 'moving-picture'

/** A refusal about a photo. */
export const photoRefusal = (facts: {
  code: PhotoRefusal
  given: string
  sentence: string
  remedy: string
}): Refusal<PhotoRefusal> => new Refusal({ ...facts, at: 'bytes' })

/** What ends before it says it does. */
export const cutPhoto = (given: string): Refusal<PhotoRefusal> =>
  photoRefusal({
    code: 'cut-photo',
    given,
    sentence: `This photo is not whole: ${given}.`,
    remedy: 'Copy it again from the camera, or take another one.',
  })
