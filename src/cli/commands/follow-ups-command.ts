import { writeFileSync } from 'node:fs'
import { clearedBy, foldJob, inCausalOrder } from '../../job/index.ts'
import { calendarOfJob } from '../../sheet/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { carried } from '../record/carried.ts'

/** `axlewright follow-ups JOB`: what is still to be done after the handover, and the same as a calendar file. */
export async function followUpsCommand(file: string, options: { calendar?: string }): Promise<Outcome> {
  const { whose, entries } = await carried(file)
  const state = foldJob(inCausalOrder(entries))
  const lines = state.followUps.map(({ entry, what, on, after, wheels, remark }) => {
    const when = on ?? (after ? `after ${after.text}` : 'no day said')
    const where = wheels ? `, ${wheels.join(', ')}` : ''
    const done = clearedBy(state, entry) === null ? '' : ' (done)'
    return `${when.padEnd(16)} ${what}${where}${remark ? `: ${remark}` : ''}${done}`
  })
  const none = 'Nothing is to be done after the handover, as far as the log says.'
  if (options.calendar !== undefined) {
    const text = calendarOfJob(state, {
      ...whose,
      stamp: new Date().toISOString(),
    })
    try {
      writeFileSync(options.calendar, text)
    } catch (error) {
      throw new BadInput([
        `${options.calendar} cannot be written (${(error as NodeJS.ErrnoException).code ?? 'unknown'}). Name a file in a folder that you may write to.`,
      ])
    }
    lines.push(`Written to ${options.calendar}: any calendar program takes it in.`)
  }
  return { out: `${lines.length > 0 ? lines.join('\n') : none}\n`, code: 0 }
}
