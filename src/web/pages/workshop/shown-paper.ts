let waiting: readonly string[] | null = null

/** Holds the root's lines until the page that shows them is open: they are kept nowhere. */
export const holdPaper = (paper: readonly string[]): void => {
  waiting = paper
}

/** What waits to be shown, once. */
export function takePaper(): readonly string[] | null {
  return waiting
}

/** It is on paper: the page forgets it. */
export const forgetPaper = (): void => {
  waiting = null
}
