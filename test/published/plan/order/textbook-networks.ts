/** A published network: optimistic, most likely and pessimistic times, and what each waits for. */
export interface Network {
  readonly source: string
  readonly actions: Readonly<
    Record<string, readonly [low: number, usual: number, high: number, after: string]>
  >
}

/** Ten activities, weeks. */
export const tenActivities: Network = {
  source:
    'operations-management course example, "Problem 1" (10 activities, 17 weeks by C-F-H-J), read in a public copy',
  actions: {
    A: [5, 6, 7, ''],
    B: [1, 3, 5, ''],
    C: [1, 4, 7, ''],
    D: [1, 2, 3, 'A'],
    E: [1, 2, 9, 'B'],
    F: [1, 5, 9, 'C'],
    G: [2, 2, 8, 'C'],
    H: [4, 4, 10, 'EF'],
    I: [2, 5, 8, 'D'],
    J: [2, 2, 8, 'HG'],
  },
}

/** Fourteen activities, with two deadlines. */
export const fourteenActivities: Network = {
  source:
    'operations-management textbook problem (14 activities, times, means, slack), as worked on a homework page, read in a public copy',
  actions: {
    A: [5, 5, 7, ''],
    B: [1, 2, 5, ''],
    C: [5, 5, 5, 'A'],
    D: [4, 8, 13, 'A'],
    E: [1, 10, 17, 'BC'],
    F: [1, 5, 7, 'D'],
    G: [2, 6, 9, 'D'],
    H: [4, 4, 6, 'EF'],
    I: [2, 7, 10, 'GH'],
    J: [2, 4, 7, 'I'],
    K: [6, 10, 13, 'I'],
    L: [2, 6, 6, 'J'],
    M: [2, 2, 3, 'K'],
    N: [7, 7, 12, 'LM'],
  },
}
