import { useRef } from 'react'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { JobRow, Plain } from '../../state/messages.ts'

/** Takes files of jobs in: new ones, or what is new in them. */
export function TakeIn({
  onTold,
  onRow,
}: {
  onTold: (lines: readonly string[]) => void
  onRow: (row: JobRow) => void
}) {
  const input = useRef<HTMLInputElement>(null)
  const take = async (files: readonly File[]) => {
    const lines: string[] = []
    for (const file of files)
      try {
        const bytes = new Uint8Array(await file.arrayBuffer())
        const { row, told } = await askKeeper('takeIn', { name: file.name, bytes })
        onRow(row)
        lines.push(`${file.name}: ${told.join(' ')}`)
      } catch (why) {
        const { sentence, remedy } = why as Plain
        lines.push(`${file.name}: ${sentence} ${remedy}`)
      }
    onTold(lines)
  }
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        Take a file in
      </button>
      <input
        ref={input}
        type="file"
        className="beside-file"
        aria-label="File of a job"
        tabIndex={-1}
        accept=".json,.zip,application/json"
        multiple
        onChange={({ target }) => {
          const files = [...(target.files ?? [])]
          target.value = ''
          if (files.length > 0) void take(files)
        }}
      />
    </>
  )
}
