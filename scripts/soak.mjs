// Long form of the honesty checks: 20,000 simulated vehicles per method and quantity, instead of a few hundred; and of
// the separate check of plans: every wearing part on both sides, hundreds of changed orders of each, every failure of every joint;
// of 10,000 flipped bits of a proof, 100 kills of the command and 60 of the browser while entries
// are appended, 30,000 spoilt logs, and some 180,000 changed files.
//   npm run soak -- [seed [draws]]
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { root, setUp } from './set-up.mjs'

await setUp()

const [seed = '20261125', draws = '20000'] = process.argv.slice(2)
const { status } = spawnSync(
  process.execPath,
  [
    join(root, 'node_modules', 'vitest', 'vitest.mjs'),
    'run',
    'test/honest',
    'test/property/plan/independent.test.ts',
    'test/property/plan/from-a-state.test.ts',
    'test/property/plan/failures.test.ts',
    'test/property/proof/sealing.test.ts',
    'test/property/proof/fuzz.test.ts',
    'test/property/job/fuzz.test.ts',
    'test/store',
    '--testTimeout=3600000',
  ],
  {
    stdio: 'inherit',
    env: { ...process.env, AXLEWRIGHT_SOAK: '1', AXLEWRIGHT_SEED: seed, AXLEWRIGHT_DRAWS: draws },
    cwd: root,
  },
)
process.exit(status ?? 1)
