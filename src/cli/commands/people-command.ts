import { personEntry } from '../../proof/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { typedCode } from '../record/hand-asked.ts'
import { type ByRoot, neededWorkshop, speak } from '../record/speak.ts'

const said = (...lines: readonly string[]): Outcome => ({ out: `${lines.join('\n')}\n`, code: 0 })

/** `axlewright workshop person SIGN`: a person with a short code, which is typed or piped in; the same again changes it. */
export async function makePerson(sign: string, { role }: { role: string }): Promise<Outcome> {
  if (role !== 'owner' && role !== 'technician')
    throw new BadInput([`--role “${role}” is not known. Say “owner” or “technician”.`])
  const { state } = await neededWorkshop()
  const isNew = !state.people.some((one) => one.sign === sign)
  const salt = crypto.getRandomValues(new Uint8Array(16))
  await speak(personEntry({ sign, role, code: typedCode(sign), salt }), {})
  return said(
    isNew
      ? `“${sign}” is one of the workshop’s people: ${role}.`
      : `“${sign}” has a new code, and is ${role}.`,
    'From now on whoever works under that sign types the code. It says who says that they worked; the device signs. Whoever has the workshop’s log and time can find a short code by trying.',
  )
}

/** `axlewright workshop left SIGN`: a person who left; nobody works under that sign any more. */
export async function personLeft(sign: string, { why, byRoot }: ByRoot & { why: string }): Promise<Outcome> {
  await neededWorkshop()
  await speak({ kind: 'person left', data: { sign, why } }, { ...(byRoot ? { byRoot } : {}) })
  return said(`“${sign}” is no longer one of the workshop’s people: ${why}.`)
}

/** `axlewright workshop keeps MONTHS`: for how long what is personal is kept after a job. */
export async function keepsPersonal(months: string): Promise<Outcome> {
  const count = Number(months)
  if (!/^\d{1,4}$/.test(months) || count > 1200)
    throw new BadInput([`“${months}” is no number of months. Say 0 to 1200, such as 24.`])
  await neededWorkshop()
  await speak({ kind: 'keeps', data: { what: 'personal', months: count } }, {})
  return said(
    `What is personal is kept for ${count} ${count === 1 ? 'month' : 'months'} after the last entry of a job.`,
    'Nothing erases it by itself: axlewright erase FOLDER_OF_JOBS --due',
  )
}
