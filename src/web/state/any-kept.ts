/** Whether anything was ever kept here: without it, the part that keeps jobs need not be loaded. */
export async function anyKept(): Promise<boolean> {
  try {
    return (await indexedDB.databases()).some(({ name }) => name === 'axlewright')
  } catch {
    return true
  }
}
