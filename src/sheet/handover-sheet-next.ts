import type { HandoverSheet } from './handover-sheet.ts'

/** The one next thing of the handover: what is unsafe before what is only not written down. @source own choice */
export function handoverNext(sheet: Omit<HandoverSheet, 'next'>): HandoverSheet['next'] {
  const here = (sentence: string, button: string, place: HandoverSheet['next']['place']) => ({
    sentence,
    button,
    place,
    stage: null,
  })
  const held = sheet.notReady.find(({ done }) => !done)
  const [conflict] = sheet.conflicts
  if (conflict) return here(`The log says two things. ${conflict.sentence}`, 'Decide', 'decide')
  if (held) return here(`Not road-ready: ${held.what}.`, 'To what holds it', 'not-ready')
  const [hold] = sheet.holds
  const driven = sheet.roadTest?.driven === true
  if (hold && !driven)
    return {
      sentence: `Not to be driven yet. ${hold.sentence}`,
      button:
        hold.stage === 'refit'
          ? 'To the bolt book'
          : hold.stage === 'angles'
            ? 'To the angles'
            : 'To the list',
      place: hold.stage === null ? 'drive' : null,
      stage: hold.stage,
    }
  if (!driven)
    return here(
      'Look at it once round while it stands, drive it, and answer the list.',
      'To the road test',
      'road',
    )
  const due = sheet.electronics.find(
    ({ why, state }) => why !== null && (state === null || state === 'to do'),
  )
  if (due)
    return here(
      `Due after what was touched: ${due.what}. Done, not fitted, or sent out?`,
      'To the electronics',
      'electronics',
    )
  const asked = sheet.extra.find(({ done }) => !done)
  if (asked) return here(`Asked and not answered: ${asked.what}.`, 'To extra work', 'extra')
  const [proposal] = sheet.proposals
  if (proposal)
    return here(`To be agreed: ${proposal.what}. ${proposal.why}`, 'To the follow-ups', 'follow-ups')
  if (sheet.signed && sheet.signed.late.length === 0)
    return here('Signed off. Give the proof to whoever takes the vehicle.', 'To the proof', 'sign')
  return here(
    sheet.finished && sheet.doubts.length === 0
      ? 'Nothing is open: read what the signature covers, and sign.'
      : `${sheet.sentence} It can be signed as it stands: what is open is part of what is signed.`,
    'To the sign-off',
    'sign',
  )
}
