import { oneByOne } from '../one-by-one.ts'

/**
 * Does work while no other window or worker of this page does work under the same name. Where the browser has no locks,
 * one waits for the other within this window alone.
 *
 * @source W3C Web Locks API
 */
export function alone<T>(name: string, work: () => Promise<T>): Promise<T> {
  const { locks } = globalThis.navigator as { readonly locks?: LockManager }
  return locks ? locks.request(name, work) : oneByOne(name, work)
}
