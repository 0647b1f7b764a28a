import { readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { codeWait, isCode, type WrongCodes } from '../../proof/index.ts'
import { writeWhole } from '../../store/index.ts'
import { BadInput } from '../files/outcome.ts'
import { ownFolder } from './own-folder.ts'
import { ownWorkshop } from './own-workshop.ts'

/**
 * Whether somebody may work under a sign: a person of this device's workshop types their code, or pipes it in; a wrong one
 * makes the next one wait. Anybody may use a sign that is nobody's, which is said.
 *
 * @returns what is to be said of it
 */
export async function handAsked(sign: string, workshop: string): Promise<readonly string[]> {
  const own = await ownWorkshop()
  if (own?.name !== workshop || (own.state.people.length === 0 && own.state.left.length === 0)) return []
  const person = own.state.people.find((one) => one.sign === sign)
  if (!person) {
    if (own.state.left.includes(sign))
      throw new BadInput([`“${sign}” left the workshop. Work under a sign of your own; nothing was written.`])
    return [`“${sign}” is nobody of the workshop’s people, so anybody may have typed it.`]
  }
  const wrong = wrongCodes()
  const mine = wrong[sign] ?? { count: 0, last: 0 }
  const wait = codeWait(mine, Date.now())
  if (wait > 0)
    throw new BadInput([
      `Too many wrong codes for “${sign}”. Wait ${Math.ceil(wait / 1000)} s, then try again; nothing was written.`,
    ])
  const typed = typedCode(sign)
  const isTheirs = isCode(person, typed)
  // What is counted is counted before it is said, so that ending the program in between gains nothing.
  const { [sign]: _, ...others } = wrong
  if (!isTheirs || mine.count > 0)
    keep(isTheirs ? others : { ...others, [sign]: { count: mine.count + 1, last: Date.now() } })
  if (!isTheirs) throw new BadInput([`This is not the code of “${sign}”. Nothing was written.`])
  return []
}

/** A code as it is typed or piped in. */
export function typedCode(sign: string): string {
  if (process.stdin.isTTY) process.stderr.write(`Code of ${sign}, then Enter and Ctrl-D: `)
  return readFileSync(0, 'utf8').trim()
}

const place = () => join(ownFolder(), 'wrong-codes.json')

function wrongCodes(): Readonly<Record<string, WrongCodes>> {
  const path = place()
  if (!statSync(path, { throwIfNoEntry: false })) return {}
  try {
    const all = JSON.parse(readFileSync(path, 'utf8')) as Readonly<Record<string, WrongCodes>>
    return Object.fromEntries(
      Object.entries(all).filter(([, one]) => Number.isFinite(one?.count) && Number.isFinite(one?.last)),
    )
  } catch {
    return {}
  }
}

const keep = (wrong: Readonly<Record<string, WrongCodes>>): void =>
  writeWhole(place(), `${JSON.stringify(wrong)}\n`, { replace: true, mode: 0o600 })
