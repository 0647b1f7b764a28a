/** Room for what a page stores, bytes, as the browser estimates it. @source definition */
export interface Room {
  readonly used: number
  readonly left: number
}

/**
 * How much room the browser still gives this page; null where it does not say.
 *
 * @source WHATWG Storage Standard, 5 (estimate)
 */
export async function roomLeft(): Promise<Room | null> {
  try {
    const { usage, quota } = await navigator.storage.estimate()
    return usage === undefined || quota === undefined
      ? null
      : { used: usage, left: Math.max(0, quota - usage) }
  } catch {
    return null
  }
}
