import { accessNeeds } from './access-needs.ts'
import type { Action, Need } from './action.ts'
import { agrees } from './agrees.ts'
import type { JointNode } from './assembly.ts'
import { bodySideToo } from './body-side-too.ts'
import { boxNeeds } from './box-actions.ts'
import { byRung } from './by-rung.ts'
import { cautionWords as say } from './caution-words.ts'
import { hasLamp } from './has-lamp.ts'
import { hasPin } from './has-pin.ts'
import { holdNeeds } from './hold-needs.ts'
import { isShaftBeside } from './is-shaft-beside.ts'
import { jointHabits } from './joint-habits.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import { looseKnuckleNeeds } from './loose-knuckle-needs.ts'
import { makeAction } from './make-action.ts'
import { needsMark } from './needs-mark.ts'
import { seizedRisk } from './seized-risk.ts'
import { spannerFor } from './spanner-for.ts'
import { supports } from './supports.ts'
import type { ThreePoint } from './three-point.ts'
import { undoingWords } from './undoing-words.ts'
import { wheelOffNeeds } from './wheel-off-needs.ts'
import type { Work } from './work.ts'

/** The actions that undo a joint. @source definition */
export interface UndoingActions {
  readonly mark: () => Action
  readonly crack: () => Action
  readonly free: () => Action
  readonly open: () => Action
}

/**
 * The actions that undo one joint: record its mark, crack it, part its taper, open it.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function undoingActions(work: Work, joint: JointNode): UndoingActions {
  const { assembly } = work
  const { id, called, axle, side, file } = joint
  const habit = jointHabits[joint.kind]
  const onBench = work.bench.has(id)
  const place = onBench ? 'at the bench' : joint.place
  const why = work.why[id] ?? 'it is in the goal'
  const base = { joint: id, axle, side, place, why } as const
  const isShaft = joint.joins.some((part) => assembly.parts[part]?.kind === 'steering shaft')
  const opens: ThreePoint = file.minutes ?? habit.opens
  const reach: readonly Need[] = onBench
    ? [
        ...joint.joins.map((part) => ({
          key: keys.part(part),
          is: ['off', 'freed'],
          why: 'it is done on the bench',
        })),
        ...accessNeeds(work, joint),
      ]
    : [
        ...supportNeeds(joint),
        ...accessNeeds(work, joint),
        ...wheelOffNeeds(work, joint),
        ...springOut(work, joint),
      ]
  const marked: readonly Need[] = needsMark(joint)
    ? [
        {
          key: keys.mark(id),
          is: bodySideToo(work, joint)
            ? ['recorded, body side too']
            : ['recorded', 'recorded, body side too'],
          why: 'how it was is lost once it moves',
          rule: 'I15',
        },
      ]
    : []

  // A drive shaft that stays connected lets the knuckle swing only so far.
  const tied = !onBench && joint.locates && connectedShaft(work, joint)
  const how: Readonly<Record<string, string>> = tied ? { shaft: 'tied up' } : {}
  const knuckle = joint.side === null ? 'both knuckles' : 'the knuckle'
  const tie = tied ? [`Tie ${knuckle} up: the ${tied.called} is not drawn beyond its joint.`] : []
  const comesDown = !onBench && joint.locates && isSubFrames(work, joint)
  const table = comesDown ? [say.subFrame] : []

  return {
    mark: () =>
      makeAction({
        ...base,
        id: `mark ${id}`,
        verb: 'mark',
        words: `Mark the ${called} as found: ${undoingWords.marks(joint).join(', ')}`,
        how: { on: bodySideToo(work, joint) ? 'body side too' : 'the joint' },
        tool: 'paint pen',
        needs: onBench
          ? []
          : habit.cracked
            ? [
                {
                  key: keys.support(axle),
                  is: supports.carried,
                  why: 'it is carried while hands are at it',
                  rule: 'I1',
                },
              ]
            : [...supportNeeds(joint), ...wheelOffNeeds(work, joint)],
        effects: { [keys.mark(id)]: bodySideToo(work, joint) ? 'recorded, body side too' : 'recorded' },
        records: undoingWords.marks(joint),
        cautions: bodySideToo(work, joint)
          ? ['The part goes, and its mark with it: mark the body side too.']
          : [],
        why: `so that the ${called} ${agrees(called, 'goes back as it was', 'go back as they were')}`,
      }),
    crack: () =>
      byRung(
        work,
        joint,
        makeAction({
          ...base,
          id: `crack ${id}`,
          verb: 'crack',
          words: habit.taper
            ? `${hasPin(joint) ? 'Pull the pin; turn' : 'Turn'} ${undoingWords.nut(called)} back to a few threads`
            : `Crack the ${called}`,
          tool: spannerFor(joint),
          needs: [
            { key: keys.joint(id), is: ['closed', 'run up', 'final', 'checked'], why: 'it is tight' },
            ...marked,
            ...(habit.cracked ? [...boxNeeds(work), ...crackedNeeds(joint)] : reach),
          ],
          effects: {
            [keys.joint(id)]: habit.taper ? 'retained' : 'cracked',
            ...(hasPin(joint) ? { [keys.pin(id)]: 'out' } : {}),
          },
          cautions: joint.kind === 'axle nut' ? [say.bearing] : [say.undo],
          why: habit.taper ? `so that the nut catches the taper of the ${called} when it lets go` : why,
        }),
      ),
    free: () =>
      byRung(
        work,
        joint,
        makeAction({
          ...base,
          id: `free ${id}`,
          verb: 'free',
          words: `Part the taper of the ${called} with the ${file.tool ?? 'separator'}, nut still on`,
          tool: file.tool ?? 'separator',
          needs: [
            { key: keys.joint(id), is: ['retained'], why: 'the nut catches it', rule: 'I5' },
            ...reach,
            ...(onBench ? [] : holdNeeds(work, joint)),
            ...(onBench || !joint.locates ? [] : looseKnuckleNeeds(work, joint)),
          ],
          effects: { [keys.taper(id)]: 'parted' },
          how,
          risk: habit.seized,
          cautions: [say.taper, say.shock, ...tie],
        }),
      ),
    open: () =>
      byRung(
        work,
        joint,
        makeAction({
          ...base,
          id: `open ${id}`,
          verb: 'open',
          words: undoingWords.open(joint),
          tool: spannerFor(joint) ?? file.tool ?? null,
          needs: [
            ...(habit.taper
              ? [{ key: keys.taper(id), is: ['parted'], why: 'a seated taper jumps', rule: 'I5' } as const]
              : []),
            ...(habit.cracked
              ? [{ key: keys.joint(id), is: ['cracked'], why: 'it is cracked first' }]
              : [{ key: keys.joint(id), is: undone, why: 'it is not open yet' }, ...marked]),
            ...reach,
            ...holdNeeds(work, joint),
            ...(onBench || !joint.locates ? [] : looseKnuckleNeeds(work, joint)),
            ...(isShaft
              ? [
                  {
                    key: keys.steeringWheel,
                    is: ['held, rack counted'],
                    why: say.shaft,
                    rule: 'I23',
                  } as const,
                  { key: keys.airbag, is: ['made safe'], why: say.airbag, rule: 'I23' } as const,
                ]
              : []),
          ],
          effects: {
            [keys.joint(id)]: 'open',
            ...(hasPin(joint) ? { [keys.pin(id)]: 'out' } : {}),
            ...lineEffects(joint, assembly),
            ...adjusterEffects(work, joint),
            ...(isShaft ? { [keys.shaft]: 'parted' } : {}),
          },
          minutes: habit.taper || habit.cracked ? [0.5, 1, 2] : opens,
          risk: habit.taper || onBench ? null : seizedRisk(joint),
          how,
          cautions: [...undoingWords.cautions(work, joint), ...tie, ...table],
        }),
      ),
  }
}

/** What holds the sub-frame to the body: undone, its whole weight comes down, with what hangs on it. */
const isSubFrames = ({ assembly }: Work, { joins }: JointNode) => {
  const kinds = joins.map((part) => assembly.parts[part]!.kind)
  return kinds.includes('sub-frame') && kinds.includes('body')
}

/** The drive shaft that stays connected beside a joint; a joint of the whole axle lets both knuckles swing. */
function connectedShaft(work: Work, joint: JointNode) {
  const { assembly } = work
  return Object.values(assembly.parts).find(
    (part) =>
      part.kind === 'drive shaft' &&
      isShaftBeside(part, joint) &&
      !jointsOf(assembly, part.id).some(({ id }) => work.open.has(id)),
  )
}

/** A loose spring is out before the pivots of its arm are undone. */
const springOut = (work: Work, joint: JointNode): readonly Need[] =>
  Object.values(work.assembly.holds)
    .filter(
      (hold) =>
        hold.loose &&
        work.standIns[hold.id] === 'jack under the arm' &&
        hold.jackPath.includes(joint.id) &&
        work.off.has(hold.id),
    )
    .map((hold) => ({
      key: keys.part(hold.id),
      is: ['off', 'freed'],
      why: `the ${hold.called} would fall out with the arm`,
      custom: true,
    }))

/** Joints of a corner are undone with the axle lifted; those in the cabin anywhere. */
function supportNeeds(joint: JointNode): readonly Need[] {
  if (joint.place === 'in the cabin') return []
  const isPinned = joint.file.access?.some(
    ({ station }) => station === 'ride' || (station === 'ground' && !jointHabits[joint.kind].cracked),
  )
  if (isPinned) return []
  return [
    {
      key: keys.support(joint.axle),
      is: supports.lifted,
      why: 'the wheel hangs and the body is carried',
      rule: 'I1',
    },
  ]
}

function crackedNeeds(joint: JointNode): readonly Need[] {
  const onGround = joint.kind === 'wheel nuts' || joint.file.cracked === 'on the ground'
  return [
    {
      key: keys.support(joint.axle),
      is: onGround ? supports.onWheels : supports.lifted,
      why: onGround ? 'the ground holds the wheel' : 'no weight on the bearing, brake held',
      rule: joint.kind === 'wheel nuts' ? 'I2' : 'I14',
    },
  ]
}

const undone = ['closed', 'cracked', 'retained', 'started', 'run up', 'final', 'checked']

/** A line that is opened must be filled and bled; a lead that is unplugged has a lamp to look at. */
function lineEffects(joint: JointNode, assembly: Work['assembly']): Record<string, string> {
  const found: Record<string, string> = {}
  if (joint.kind === 'hydraulic union') {
    found[keys.line(joint.id)] = 'open'
  }
  for (const part of joint.joins) {
    const kind = assembly.parts[part]?.kind
    if (hasLamp(assembly, part)) found[keys.lamp(part)] = 'to look at'
    if (kind === 'height-sensor rod') found[keys.levelSensor] = 'to check'
  }
  return found
}

function adjusterEffects(work: Work, joint: JointNode): Record<string, string> {
  const found: Record<string, string> = {}
  for (const adjuster of Object.values(work.assembly.adjusters))
    if (adjuster.joints.includes(joint.id)) found[keys.adjuster(adjuster.id)] = 'disturbed'
  return found
}
