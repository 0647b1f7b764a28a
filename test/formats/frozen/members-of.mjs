/**
 * Every member that a schema names, as a path (`wheel.camber`, `points.*.at`), and every word that a member may be,
 * as path = word (`joints.*.kind = bolt`): what a later schema may not lose.
 */
export function membersOf(schema) {
  const found = new Set()
  const walk = (part, path) => {
    for (const word of part.enum ?? (part.const === undefined ? [] : [part.const]))
      found.add(`${path} = ${word}`)
    for (const [name, inner] of Object.entries(part.properties ?? {})) {
      const here = path === '' ? name : `${path}.${name}`
      found.add(here)
      walk(inner, here)
    }
    if (typeof part.additionalProperties === 'object') walk(part.additionalProperties, `${path}.*`)
    if (part.items && typeof part.items === 'object') walk(part.items, `${path}[]`)
    for (const [i, inner] of (part.prefixItems ?? []).entries()) walk(inner, `${path}[${i}]`)
    for (const inner of [...(part.oneOf ?? []), ...(part.anyOf ?? [])]) walk(inner, path)
  }
  walk(schema, '')
  return [...found].sort()
}
