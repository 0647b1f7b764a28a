/** Whether the browser promised to keep what a page stores until a person deletes it. @source definition */
export type Persistence = 'granted' | 'not granted' | 'cannot be told'

/**
 * Asks the browser to keep what this page stores until a person deletes it, and says what it answered.
 *
 * @source WHATWG Storage Standard, 5 (persist)
 */
export async function askPersistence(): Promise<Persistence> {
  try {
    const { storage } = globalThis.navigator as { readonly storage?: StorageManager }
    if (!storage?.persisted) return 'cannot be told'
    // A worker may look, and not ask.
    const isGranted = (await storage.persisted()) || ((await storage.persist?.()) ?? false)
    return isGranted ? 'granted' : 'not granted'
  } catch {
    return 'cannot be told'
  }
}
