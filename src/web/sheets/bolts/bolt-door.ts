import './bolts.css'
import './doing.css'
import './bolts-print.css'

export { BoltsNext } from './bolts-next.tsx'
export { BoltsSheet } from './bolts-sheet.tsx'
export { DoingStage } from './doing-stage.tsx'
