import { useState } from 'react'

/**
 * A list as it will stand: touches that follow each other quickly build on each other, before the sheet has caught up.
 *
 * @param stands as the sheet has it
 * @param sheet another sheet has caught up
 */
export function useWanted(
  stands: readonly string[],
  sheet: unknown,
): readonly [readonly string[], (next: readonly string[]) => void] {
  const [wanted, setWanted] = useState<{ sheet: unknown; list: readonly string[] } | null>(null)
  return [wanted && wanted.sheet === sheet ? wanted.list : stands, (list) => setWanted({ sheet, list })]
}
