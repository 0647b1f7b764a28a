import { useId } from 'react'
import type { ArrivalWheel } from '../../../sheet/index.ts'
import type { OpenJob } from '../../state/use-job.ts'
import { ReadingField } from '../angles/reading-field.tsx'

/** The height at one wheel: typed over where it is noted. */
export function HeightField({
  wheel,
  height,
  text,
  example,
  onText,
  isWrong,
  job,
}: {
  wheel: string
  height: ArrivalWheel['height']
  text: string
  example: string
  onText: (text: string) => void
  isWrong: boolean
  job: OpenJob
}) {
  const id = useId()
  const place = `height-${wheel.replace(' ', '-')}`
  if (height)
    return (
      <div className={place}>
        {Object.entries(height.texts).map(([path, stands], i) => (
          <ReadingField
            key={path}
            input={{
              entry: height.entry,
              path,
              label: [wheel, i > 0 ? i + 1 : '', height.when === 'settled' ? 'settled' : '']
                .filter(Boolean)
                .join(', '),
              text: stands,
            }}
            hand={job.hand}
          />
        ))}
      </div>
    )
  return (
    <div className={`field ${place}${isWrong ? ' field-refused' : ''}`}>
      <label htmlFor={id}>{wheel}</label>
      <input
        id={id}
        value={text}
        placeholder={example}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        aria-invalid={isWrong}
        onChange={({ target }) => onText(target.value)}
      />
    </div>
  )
}
