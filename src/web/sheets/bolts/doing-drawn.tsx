import type { SheetBolt, SheetCorner } from '../../../sheet/index.ts'
import { CornerDrawing } from '../../drawing/corner-drawing.tsx'
import { useMatch } from '../../drawing/use-match.ts'
import { CastleDrawing } from './castle-drawing.tsx'
import './doing-drawn.css'
import { RingDrawing } from './ring-drawing.tsx'
import { ScaleDrawing } from './scale-drawing.tsx'
import { TurnDrawing } from './turn-drawing.tsx'

/** What the hand meets: castle nut, ring of fasteners, turn; else where the joint is, and the scale that is set. */
export function DoingDrawn({ bolt, corner }: { bolt: SheetBolt; corner: SheetCorner | null }) {
  const roomy = useMatch('(min-width: 700px)')
  const { drawing, figures } = bolt.doing
  if (drawing)
    return (
      <div className="doing-drawn">
        {drawing.kind === 'castle nut' && <CastleDrawing slots={drawing.slots} pitch={drawing.pitch} />}
        {drawing.kind === 'ring' && <RingDrawing order={drawing.order} count={drawing.count} />}
        {drawing.kind === 'turn' && <TurnDrawing angle={drawing.angle} />}
      </div>
    )
  const torque = figures.find(({ unit }) => unit !== '°')
  const there = roomy && corner?.ride.joints.some(({ letter }) => letter === bolt.letter) ? corner : null
  if (!torque && !there) return null
  return (
    <div className="doing-drawn">
      {there && (
        <div className="doing-corner">
          <CornerDrawing corner={there} view="front" chosen={bolt.letter} onChoose={() => undefined} />
        </div>
      )}
      {torque && <ScaleDrawing value={Number(torque.value)} unit={torque.unit} />}
    </div>
  )
}
