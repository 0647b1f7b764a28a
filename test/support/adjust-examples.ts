// What the adjust room's examples speak of. Invented.
import { eccentric, longArms } from '../property/adjust/invented-corners.ts'

export const corner = longArms
export const upperFront = eccentric('upper front', 'upperFrontInner')
