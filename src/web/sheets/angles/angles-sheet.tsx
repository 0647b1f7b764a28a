import { useState } from 'react'
import type { Side } from '../../../linkage/index.ts'
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
import { RoundBlock } from './round-block.tsx'
import { SideChoice } from './side-choice.tsx'
import { Troubles } from './troubles.tsx'

/** The wheel to look at first: the one with the most to turn, then the one with the most outside. */
function firstSide(sheet: Sheet): Side {
  const weight = (side: Side) =>
    100 * sheet.moves.moves.filter((move) => move.side === side).length +
    sheet.readings.filter(({ name, verdict }) => verdict === 'outside' && name.includes(` ${side} `)).length
  const drawn = sheet.corners.map((corner) => corner.side)
  return [...drawn].sort((a, b) => weight(b) - weight(a))[0] ?? 'left'
}

/** The Angles sheet: readings, moves, reach map, corner, clamp pose. */
export function AnglesSheet({ sheet, job }: { sheet: Sheet; job: OpenJob }) {
  const { hand, form } = job
  const [picked, setPicked] = useState<Side | null>(null)
  const side = picked ?? firstSide(sheet)
  const reach = sheet.reach.find((map) => map.side === side)
  const corner = sheet.corners.find((drawing) => drawing.side === side)
  const clamp = sheet.clamp.find((block) => block.side === side)
  const narrow = useMatch('(max-width: 1179px)')
  const printing = usePrinting()
  const sides = [...new Set([...sheet.corners, ...sheet.reach, ...sheet.clamp].map((part) => part.side))]
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
      {sides.length > 1 && <SideChoice sides={sides} side={side} onChoose={setPicked} />}
      <div className="angles-drawings">
        {reach && <ReachMap reach={reach} readings={sheet.readings} />}
        {corner && <CornerBlock key={side} corner={corner} />}
      </div>
    </div>
  )
  const more = (
    <div key="more" className="angles-more">
      <Heights sheet={sheet} hand={hand} />
      {clamp && <ClampBlock clamp={clamp} job={sheet.title.job} />}
    </div>
  )
  return (
    <div className="angles">
      <Troubles troubles={sheet.troubles} />
      {form && (
        <RoundBlock
          form={form}
          inputs={[...sheet.readings, ...sheet.heights].flatMap((part) => part.inputs)}
          job={job}
        />
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
