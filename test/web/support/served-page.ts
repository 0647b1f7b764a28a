import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'

const root = join(import.meta.dirname, '..', '..', '..')

/** A started server: its process, the address it printed, and all that it printed. */
export interface ServedPage {
  readonly process: ChildProcess
  readonly address: string
  readonly printed: () => string
  readonly ended: Promise<number | null>
}

/** Starts a command that serves the page and waits for its address line. */
export function serve(command: string, args: readonly string[], env: Record<string, string> = {}) {
  const child = spawn(command, args, { cwd: root, env: { ...process.env, ...env } })
  let out = ''
  let err = ''
  const ended = new Promise<number | null>((resolve) => child.on('exit', (code) => resolve(code)))
  return new Promise<ServedPage>((resolve, reject) => {
    child.stdout.on('data', (data) => {
      out += data
      const address = /http:\/\/\S+/.exec(out)?.[0]
      if (address) resolve({ process: child, address, printed: () => out, ended })
    })
    child.stderr.on('data', (data) => {
      err += data
    })
    child.on('exit', (code) =>
      reject(new Error(`It ended with ${code} before it printed an address. ${err}`)),
    )
  })
}

/** The page on any free port. */
export const servePage = () => serve(process.execPath, [join(root, 'scripts', 'start.mjs'), '--port', '0'])

/** Ends a server and waits until it is gone. */
export async function endServer(page: ServedPage): Promise<number | null> {
  page.process.kill('SIGTERM')
  return page.ended
}
