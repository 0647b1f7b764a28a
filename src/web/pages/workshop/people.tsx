import { useEffect, useId, useState } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { Person } from '../../keep/keep-messages.ts'
import type { Plain } from '../../state/messages.ts'

/** Who works here, each with a short code: it says who says that they worked, on a tablet that many use. */
export function People() {
  const id = useId()
  const [people, setPeople] = useState<readonly Person[]>([])
  const [sign, setSign] = useState('')
  const [code, setCode] = useState('')
  const [role, setRole] = useState<'owner' | 'technician'>('technician')
  const [trouble, setTrouble] = useState<Plain | null>(null)
  useEffect(() => {
    askKeeper('people', null).then(
      (back) => setPeople(back.people),
      (why: Plain) => setTrouble(why),
    )
  }, [])
  const ready = sign.trim() !== '' && code !== ''
  const add = () =>
    askKeeper('addPerson', { sign: sign.trim(), code, role }).then(
      (back) => {
        setPeople(back.people)
        setSign('')
        setCode('')
        setTrouble(null)
      },
      (why: Plain) => setTrouble(why),
    )
  return (
    <section aria-label="People">
      <h2>People: {people.length}</h2>
      <ul className="people">
        {people.map((person) => (
          <li key={person.sign}>
            <strong>{person.sign}</strong> {person.role}
          </li>
        ))}
      </ul>
      <form
        className="beside-field"
        onSubmit={(event) => {
          event.preventDefault()
          if (ready) void add()
        }}
      >
        <label htmlFor={`${id}-sign`}>Initials or a sign</label>
        <input
          id={`${id}-sign`}
          value={sign}
          maxLength={12}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          onChange={(event) => setSign(event.target.value)}
        />
        <label htmlFor={`${id}-code`}>Their own code, four to eight digits</label>
        <input
          id={`${id}-code`}
          type="password"
          inputMode="numeric"
          value={code}
          maxLength={8}
          autoComplete="off"
          onChange={(event) => setCode(event.target.value)}
        />
        <div className="beside-do">
          {(['technician', 'owner'] as const).map((one) => (
            <button key={one} type="button" aria-pressed={role === one} onClick={() => setRole(one)}>
              {one}
            </button>
          ))}
        </div>
        <small>
          The code is asked when somebody takes over the work on this device. It tells hands apart; it signs
          nothing, and keeps nobody out who has the device and time.
        </small>
        {trouble && (
          <p role="alert">
            {trouble.sentence} {trouble.remedy}
          </p>
        )}
        <div className="beside-do">
          <button type="submit" className="primary" aria-disabled={!ready}>
            Add, or give another code
          </button>
        </div>
      </form>
    </section>
  )
}
