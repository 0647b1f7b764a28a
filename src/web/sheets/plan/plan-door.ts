import './plan.css'
import './plan-lines.css'
import './plan-print.css'

export { PlanStage } from './plan-stage.tsx'
