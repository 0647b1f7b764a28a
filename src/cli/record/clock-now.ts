/** As the store keeps time. */
export { clockNow } from '../../store/index.ts'
