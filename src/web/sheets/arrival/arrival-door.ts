import './arrival.css'
import './arrival-print.css'

export { ArrivalStage as default } from './arrival-stage.tsx'
