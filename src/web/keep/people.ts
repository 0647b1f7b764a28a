import { codeWait, isCode, personEntry, type WrongCodes } from '../../proof/index.ts'
import { ownWorkshop } from '../../store/browser/index.ts'
import type { KeepAsks, Person } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'
import { saidInWorkshop } from './said-in-workshop.ts'

const none = { count: 0, last: 0 }
/** Wrong codes since the last right one: in this worker, which lives as long as a window of the page. */
const wrong = new Map<string, WrongCodes>()

/** The people of the workshop. */
export async function peopleHere({ store }: Keeper): Promise<{ readonly people: readonly Person[] }> {
  const own = await ownWorkshop(store)
  return {
    people: (own?.state.people ?? []).map(({ sign, role }) => ({ sign, role: role ?? 'technician' })),
  }
}

/**
 * Gets to know a person of the workshop by a short code.
 *
 * @throws {Refusal} `no-workshop`; `bad-code`; `no-room`, `read-only`
 */
export async function personAdded(
  keeper: Keeper,
  { sign, code, role }: KeepAsks['addPerson']['give'],
): Promise<KeepAsks['addPerson']['back']> {
  const salt = crypto.getRandomValues(new Uint8Array(16))
  await saidInWorkshop(keeper, personEntry({ sign, code, role, salt }))
  return peopleHere(keeper)
}

/** Whether a code is a person's. Each wrong one lets the next wait longer. */
export async function codeChecked(
  { store }: Keeper,
  { sign, code }: KeepAsks['checkCode']['give'],
): Promise<KeepAsks['checkCode']['back']> {
  const person = (await ownWorkshop(store))?.state.people.find((one) => one.sign === sign)
  // Who has no code needs none.
  if (!person) return { isTheirs: true, waits: 0 }
  const before = wrong.get(sign) ?? none
  const waits = codeWait(before, Date.now())
  if (waits > 0) return { isTheirs: false, waits }
  const isTheirs = isCode(person, code)
  if (isTheirs) wrong.delete(sign)
  else wrong.set(sign, { count: before.count + 1, last: Date.now() })
  return { isTheirs, waits: isTheirs ? 0 : codeWait(wrong.get(sign) ?? none, Date.now()) }
}
