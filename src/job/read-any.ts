import { bad, type Corner, good, type Reading, readCorner, readJsonText } from '../corner/index.ts'
import { type Kit, readKit } from '../kit/index.ts'
import { readSpec, type Spec } from '../spec/index.ts'
import type { Job } from './entry.ts'
import { readJob } from './read-job.ts'
import { sniffFormat } from './sniff-format.ts'

/** A file of any of the four formats, read. @source definition */
export type AnyFile =
  | { readonly format: 'corner'; readonly value: Corner }
  | { readonly format: 'spec'; readonly value: Spec }
  | { readonly format: 'kit'; readonly value: Kit }
  | { readonly format: 'job'; readonly value: Job }

/**
 * Text of a file of any of the four formats to its value, or everything that is wrong with it.
 *
 * @param name the file's name, which may tell the format
 * @param text the whole file
 * @source definition
 * @example readAny({ name: 'a.kit.json', text: '{' }).ok // false
 */
export function readAny({ name, text }: { name: string; text: string }): Reading<AnyFile> {
  const json = readJsonText(text)
  if (!json.ok) return json
  const format = sniffFormat({ name, json: json.value })
  const as = <F extends AnyFile['format'], T>(named: F, read: Reading<T>) =>
    read.ok ? good({ format: named, value: read.value } as unknown as AnyFile) : read
  switch (format) {
    case 'corner':
      return as(format, readCorner(json.value))
    case 'spec':
      return as(format, readSpec(json.value))
    case 'kit':
      return as(format, readKit(json.value))
    case 'job':
      return as(format, readJob(json.value))
    case null:
      return bad([
        {
          field: 'the file',
          wrong: 'Neither its name nor its members tell which format it is.',
          right:
            'a name that ends in .corner.json, .spec.json, .kit.json or .job.json, or a member "kind" that says it',
        },
      ])
  }
}
