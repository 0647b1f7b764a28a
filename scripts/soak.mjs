// Long form of the honesty checks: 20,000 simulated vehicles per method and quantity, instead of a few hundred.
//   node scripts/soak.mjs [seed [draws]]
import { spawnSync } from 'node:child_process'

const [seed = '20261125', draws = '20000'] = process.argv.slice(2)
const { status } = spawnSync('npx', ['vitest', 'run', 'test/honest', '--testTimeout=3600000'], {
  stdio: 'inherit',
  env: { ...process.env, AXLEWRIGHT_SOAK: '1', AXLEWRIGHT_SEED: seed, AXLEWRIGHT_DRAWS: draws },
  shell: process.platform === 'win32',
})
process.exit(status ?? 1)
