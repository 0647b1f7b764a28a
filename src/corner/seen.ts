/** A value any part of which may be absent: what is left of a file once its faulty members are taken out. @source definition */
export type Seen<T> = T extends string | number | boolean | null
  ? T | undefined
  : T extends readonly (infer U)[]
    ? readonly Seen<U>[] | undefined
    : { readonly [K in keyof T]?: Seen<T[K]> } | undefined
