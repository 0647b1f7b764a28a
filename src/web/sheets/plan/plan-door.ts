import './plan.css'
import './plan-lines.css'
import './plan-print.css'

export { PlanStage as default } from './plan-stage.tsx'
