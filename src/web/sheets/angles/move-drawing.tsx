import type { SheetMove } from '../../../sheet/index.ts'
import { EccentricDrawing } from './eccentric-drawing.tsx'
import { RodDrawing } from './rod-drawing.tsx'
import { ShimDrawing } from './shim-drawing.tsx'
import { SlotDrawing } from './slot-drawing.tsx'
import { WedgeDrawing } from './wedge-drawing.tsx'

/** The part that a move turns, slides, adds or changes, as the hand sees it. */
export function MoveDrawing({ move }: { move: SheetMove }) {
  switch (move.kind) {
    case 'eccentric':
    case 'offset sleeve':
      return <EccentricDrawing move={move} />
    case 'thread':
      return <RodDrawing move={move} />
    case 'shims':
      return <ShimDrawing move={move} />
    case 'wedge':
      return <WedgeDrawing move={move} />
    case 'slotted bolt':
    case 'slide':
    case 'top plate':
    case 'sub-frame shift':
      return <SlotDrawing move={move} />
  }
}
