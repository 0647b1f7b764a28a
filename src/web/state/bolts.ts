export { boltSheetFrom as bolts } from '../../sheet/index.ts'
