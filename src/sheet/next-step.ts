import type { Moves } from '../adjust/index.ts'
import type { Round } from '../job/index.ts'
import type { Sheet, SheetReading } from './sheet.ts'

/** The one plain sentence at the foot of the sheet, and what its button says. */
export function nextStep(
  round: Round | null,
  rows: readonly SheetReading[],
  answer: Moves | null,
  unread: readonly string[],
): Sheet['next'] {
  if (!round || rows.length === 0)
    return {
      sentence:
        'No angles are read yet. Set the pressures, settle the vehicle, and read camber, caster and toe.',
      button: 'Read the angles',
      act: 'read',
    }
  if (round.moves.length > 0)
    return {
      sentence:
        'Adjusters were turned after these readings. Nip the bolts up, roll and jounce the vehicle, and read everything again.',
      button: 'Read again',
      act: 'read',
    }
  if (answer && answer.moves.length > 0)
    return { sentence: answer.sentence, button: 'Turned. Read again', act: 'turned' }
  const limited = rows.filter((row) => row.limit)
  const allInside = limited.length > 0 && limited.every((row) => row.verdict === 'inside')
  if (allInside && unread.length > 0)
    return {
      sentence: `What was read is inside. Not read in this round: ${unread.join('; ')}. Nothing is proven until they are.`,
      button: 'Read again',
      act: 'read',
    }
  if (allInside)
    return round.purpose === 'proving'
      ? {
          sentence: 'Everything is inside, and proven with every joint final.',
          button: 'To handover',
          act: 'handover',
        }
      : {
          sentence:
            'Everything is inside, and proven. Make the bolts final at ride height, settle the vehicle, and take the proving reading.',
          button: 'Bolts final. Read again',
          act: 'prove',
        }
  return {
    sentence: answer?.sentence ?? 'Type the limits from your service information to judge these readings.',
    button: 'Read again',
    act: 'read',
  }
}
