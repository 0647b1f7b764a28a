// Says which test file has finished, so that a long run shows where it is; failures are told at the end.
import { relative } from 'node:path'
import { root } from './set-up.mjs'

export default class RoomReporter {
  onTestModuleEnd(module) {
    const tests = [...module.children.allTests()]
    const failed = tests.filter((test) => test.result().state === 'failed').length
    const file = relative(root, module.moduleId)
    const seconds = (module.diagnostic().duration / 1000).toFixed(1)
    const broken = failed > 0 || module.state() === 'failed'
    console.log(`${broken ? 'FAIL' : 'ok  '} ${file} (${tests.length} tests, ${seconds} s)`)
  }

  onUnhandledErrors(errors) {
    for (const error of errors) console.log(`FAIL outside a test: ${error.stack ?? error.message ?? error}`)
  }
}
