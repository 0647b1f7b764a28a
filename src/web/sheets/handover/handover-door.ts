import '../arrival/arrival.css'
import '../arrival/arrival-print.css'
import './handover.css'
import './handover-print.css'

export { HandoverStage as default } from './handover-stage.tsx'
