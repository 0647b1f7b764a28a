/** A browser that really starts, and what its environment needs. */
export interface FoundBrowser {
  readonly path: string
  readonly env: Readonly<Record<string, string>>
}
export const browserFlags: readonly string[]
export function findBrowser(): Promise<FoundBrowser>
