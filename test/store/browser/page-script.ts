import { createRequire } from 'node:module'
import { join, resolve } from 'node:path'
import { build, type Plugin } from 'esbuild'

const root = join(import.meta.dirname, '..', '..', '..')
const ofVitest = createRequire(join(root, 'node_modules', 'vitest', 'package.json'))

/** Vitest's own `expect`, without what runs tests: that needs Node. */
const expectAlone: Plugin = {
  name: 'expect-alone',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^vitest$/ }, () => ({ path: 'vitest', namespace: 'expect-alone' }))
    onLoad({ filter: /.*/, namespace: 'expect-alone' }, () => ({
      resolveDir: join(ofVitest.resolve('@vitest/expect'), '..'),
      contents: `
        import * as chai from 'chai'
        import * as all from '@vitest/expect'
        for (const one of ['JestExtend', 'JestChaiExpect', 'JestAsymmetricMatchers']) chai.use(all[one])
        globalThis[all.GLOBAL_EXPECT] = chai.expect
        all.setState({ assertionCalls: 0 }, chai.expect)
        export const expect = chai.expect
        export const describe = () => {}
        export const test = () => {}
      `,
    }))
  },
}

/** A script for a page, out of a file, by its path or its name beside the tests, with all that it imports. */
export async function pageScript(file: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [resolve(import.meta.dirname, file)],
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    logLevel: 'error',
    plugins: [expectAlone],
  })
  return outputFiles[0]!.text
}
