import { expect, test } from 'vitest'
import { mergePatch } from '../../../src/job/merge-patch.ts'

// RFC 7396, Appendix A: original, patch, result.
const rows: readonly (readonly [string, string, string])[] = [
  ['{"a":"b"}', '{"a":"c"}', '{"a":"c"}'],
  ['{"a":"b"}', '{"b":"c"}', '{"a":"b","b":"c"}'],
  ['{"a":"b"}', '{"a":null}', '{}'],
  ['{"a":"b","b":"c"}', '{"a":null}', '{"b":"c"}'],
  ['{"a":["b"]}', '{"a":"c"}', '{"a":"c"}'],
  ['{"a":"c"}', '{"a":["b"]}', '{"a":["b"]}'],
  ['{"a":{"b":"c"}}', '{"a":{"b":"d","c":null}}', '{"a":{"b":"d"}}'],
  ['{"a":[{"b":"c"}]}', '{"a":[1]}', '{"a":[1]}'],
  ['["a","b"]', '["c","d"]', '["c","d"]'],
  ['{"a":"b"}', '["c"]', '["c"]'],
  ['{"a":"foo"}', 'null', 'null'],
  ['{"a":"foo"}', '"bar"', '"bar"'],
  ['{"e":null}', '{"a":1}', '{"e":null,"a":1}'],
  ['[1,2]', '{"a":"b","c":null}', '{"a":"b"}'],
  ['{}', '{"a":{"bb":{"ccc":null}}}', '{"a":{"bb":{}}}'],
]

for (const [original, patch, result] of rows)
  test(`JO6 a correction is a merge patch: ${original} with ${patch} [from memory]`, () => {
    expect(mergePatch(JSON.parse(original), JSON.parse(patch))).toEqual(JSON.parse(result))
  })
