import type { NextCheck } from './findings.ts'
import type { Weighed } from './weighed.ts'
export const nextChecks = (_: Weighed): readonly NextCheck[] => []
