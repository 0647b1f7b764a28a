export function membersOf(schema: object): string[]
