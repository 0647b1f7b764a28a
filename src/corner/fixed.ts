/** The same value, readonly all the way down. Numbers keep their unit tags. @source definition */
export type Fixed<T> = T extends string | number | boolean | null | undefined
  ? T
  : T extends (...args: never[]) => unknown
    ? T
    : { readonly [K in keyof T]: Fixed<T[K]> }
