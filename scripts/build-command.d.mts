/** Builds when the sources changed since the last build; returns the path of the bundle. */
export function buildCommand(): Promise<string>
