import { lazy, Suspense, useState } from 'react'
import type { Sheet } from '../../../sheet/index.ts'
import { useMatch } from '../../drawing/use-match.ts'
import { usePrinting } from '../../drawing/use-printing.ts'
import type { OpenJob } from '../../state/use-job.ts'
import './angles-sheet.css'
import { Cautions } from './cautions.tsx'
import { ClampBlock } from './clamp-block.tsx'
import { CornerBlock } from './corner-block.tsx'
import { Heights } from './heights.tsx'
import { Moves } from './moves.tsx'
import { ReachMap } from './reach-map.tsx'
import { Readings } from './readings.tsx'
import { Troubles } from './troubles.tsx'
import { WearBlock } from './wear-block.tsx'
import { WheelChoice } from './wheel-choice.tsx'
import { wheelOf } from './wheel-of.ts'
import { wheelOrder } from './wheel-order.ts'

/** Only who has turned something reads again. */
const RoundBlock = lazy(() => import('./round-block.tsx').then((all) => ({ default: all.RoundBlock })))

/** The wheel to look at first: the one with the most to turn, then the one with the most outside. */
function firstWheel(sheet: Sheet): string {
  const weight = (wheel: string) => {
    const [end = '', side = ''] = wheel.split(' ')
    const moves = sheet.moves.moves.filter(
      (move) => move.wheel === `${side} ${end}` || move.wheel === `${end} axle`,
    )
    const outside = sheet.readings.filter(
      ({ name, verdict }) => verdict === 'outside' && name.startsWith(`${wheel} `),
    )
    return 100 * moves.length + outside.length
  }
  return sheet.corners.map(wheelOf).sort((a, b) => weight(b) - weight(a))[0] ?? 'front left'
}

/** The Angles sheet: readings, moves, reach map, corner, clamp pose. */
export function AnglesSheet({ sheet, job }: { sheet: Sheet; job: OpenJob }) {
  const { hand, form } = job
  const [picked, setPicked] = useState<string | null>(null)
  const wheel = picked ?? firstWheel(sheet)
  const ofWheel = (part: Parameters<typeof wheelOf>[0]) => wheelOf(part) === wheel
  const reach = sheet.reach.find(ofWheel)
  const corner = sheet.corners.find(ofWheel)
  const clamp = sheet.clamp.find(ofWheel)
  const narrow = useMatch('(max-width: 1179px)')
  const printing = usePrinting()
  const wheels = [...new Set([...sheet.corners, ...sheet.reach, ...sheet.clamp].map(wheelOf))].sort(
    (a, b) => wheelOrder(a) - wheelOrder(b),
  )
  // What comes first: beside each other on a wide screen; what the hand does before all else on a small one.
  const readings = <Readings key="readings" sheet={sheet} hand={hand} narrow={narrow} />
  const answer = (
    <div key="answer" className="angles-answer">
      <Cautions cautions={sheet.cautions} title="Before anything is turned" job={sheet.title.job} />
      <Moves moves={sheet.moves} made={job.made && sheet.moves.moves.length > 0} />
    </div>
  )
  const drawn = (
    <div key="drawn" className="angles-drawn">
      {wheels.length > 1 && <WheelChoice wheels={wheels} wheel={wheel} onChoose={setPicked} />}
      <div className="angles-drawings">
        {reach && <ReachMap reach={reach} readings={sheet.readings} />}
        {corner && <CornerBlock key={wheel} corner={corner} />}
      </div>
    </div>
  )
  const more = (
    <div key="more" className="angles-more">
      <Heights sheet={sheet} hand={hand} />
      <WearBlock wear={sheet.wear} hand={hand} />
      {clamp && <ClampBlock clamp={clamp} job={sheet.title.job} />}
    </div>
  )
  return (
    <div className="angles">
      <Troubles troubles={sheet.troubles} />
      {form && (
        <Suspense>
          <RoundBlock
            form={form}
            inputs={[...sheet.readings, ...sheet.heights].flatMap((part) => part.inputs)}
            job={job}
          />
        </Suspense>
      )}
      <div className="angles-main">
        {printing
          ? [answer, readings, more, drawn]
          : narrow
            ? [answer, readings, drawn, more]
            : [readings, answer, drawn, more]}
      </div>
    </div>
  )
}
