/** 0 fine; 1 a limit or a hold point fails; 2 bad input. */
export type ExitCode = 0 | 1 | 2

/** What a command wants to say and how it ends. */
export interface Outcome {
  readonly out: string
  readonly code: ExitCode
}

/** Input that cannot be used: told on standard error in plain sentences, exit 2. */
export class BadInput extends Error {
  readonly lines: readonly string[]

  constructor(lines: readonly string[]) {
    super(lines.join('\n'))
    this.name = 'BadInput'
    this.lines = lines
  }
}
