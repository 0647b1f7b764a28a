import { homedir } from 'node:os'
import { join } from 'node:path'

/** Where this device keeps its key and the workshop's log: the user's own folder, or the one that AXLEWRIGHT_HOME names. */
export const ownFolder = (): string => process.env['AXLEWRIGHT_HOME'] || join(homedir(), '.axlewright')
