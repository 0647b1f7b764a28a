import './findings.css'
import './findings-print.css'

export { FindingsStage as default } from './findings-stage.tsx'
