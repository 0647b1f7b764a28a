import { adjustersOf, axleAdjustersOf } from '../corner/index.ts'
import { clearedBy, type JobState, type WheelName, wheelPlace } from '../job/index.ts'
import type { ProofLine, ProofSheet } from './proof-sheet.ts'
import { cornerAt, type SheetSources } from './sources.ts'

type Lines = Pick<
  ProofSheet,
  'marks' | 'parts' | 'declined' | 'electronics' | 'deviations' | 'followUps' | 'decisions' | 'roadTests'
>

/** What the log tells in words: each once, what is still open marked as that. */
export function proofLines(sources: SheetSources, state: JobState): Lines {
  const called = names(sources)
  const cleared = (entry: number): string | null => {
    const by = clearedBy(state, entry)
    const fact = state.cleared.find((one) => one.entry === by)
    return fact ? said(fact.how, fact.hand, day(fact.at)) : null
  }
  return {
    marks: [
      ...state.asFound.map((fact) =>
        line(
          said(called.adjuster(fact.adjuster, fact.wheel), fact.wheel),
          said(
            fact.clock && clockText(fact.clock.text),
            fact.setting?.text,
            fact.fitted === 'turned round' && 'fitted the wrong way round',
            fact.exposedThread && `exposed thread ${fact.exposedThread.text}`,
            fact.jointToThread && `joint to thread ${fact.jointToThread.text}`,
            ...found(fact),
          ),
        ),
      ),
      ...state.marks.map((fact) =>
        line(
          said(fact.what, fact.wheel),
          said(
            fact.joint && called.joint(fact.joint, fact.wheel),
            fact.clock && clockText(fact.clock.text),
            fact.wayRound,
            fact.exposedThread && `exposed thread ${fact.exposedThread.text}`,
            fact.jointLength && `joint length ${fact.jointLength.text}`,
            fact.turns?.text,
            ...found(fact),
          ),
        ),
      ),
    ],
    parts: state.renewed.map((fact) =>
      line(
        said(called.part(fact.part, fact.wheels[0]), fact.wheels.join(' and ')),
        said(
          fact.number && `number ${fact.number}`,
          fact.lot ? `lot ${fact.lot}` : 'no lot recorded',
          fact.side && `marked ${fact.side}`,
          fact.compared && `compared ${fact.compared.join(' and ')}`,
          fact.remark,
        ),
      ),
    ),
    declined: state.extraWork
      .filter(({ answer }) => answer !== 'yes')
      .map((fact) =>
        line(
          said(fact.what, fact.wheels?.join(' and ')),
          said(
            fact.why,
            fact.answer === 'no'
              ? `declined${fact.by ? ` by the ${fact.by.replace(/^the /, '')}` : ''}`
              : 'asked, not answered',
            fact.how,
            day(fact.at),
            fact.risk ? `risk said: ${fact.risk}` : 'no risk recorded',
          ),
          fact.answer === 'asked',
        ),
      ),
    electronics: latest(state.electronics).map((fact) =>
      line(
        fact.what,
        said(fact.state, fact.to && `to ${fact.to}`, fact.remark, fact.hand, day(fact.at)),
        fact.state === 'to do',
      ),
    ),
    deviations: state.deviations.map((fact) => {
      const right = cleared(fact.entry)
      return line(
        said(
          fact.what,
          fact.joint && called.joint(fact.joint, fact.wheel),
          fact.part && called.part(fact.part, fact.wheel),
          fact.wheel,
        ),
        said(fact.remark, right === null ? 'not put right' : `put right: ${right}`),
        right === null,
      )
    }),
    followUps: state.followUps.map((fact) => {
      const done = cleared(fact.entry)
      return line(
        fact.what,
        said(
          fact.on ? day(fact.on) : fact.after ? `after ${fact.after.text}` : 'no day said',
          fact.wheels?.join(' and '),
          fact.card && 'the driver has a card',
          fact.remark,
          done && `done: ${done}`,
        ),
        done === null,
      )
    }),
    decisions: state.decisions.map((fact) =>
      line(
        `Of entries ${fact.of.map(number).join(', ')} number ${number(fact.keep)} holds`,
        said(fact.why, fact.hand, day(fact.at)),
      ),
    ),
    roadTests: state.roadTests.map((fact) =>
      line(
        `Road test ${fact.when}`,
        said(
          fact.driven ? 'driven' : 'not driven',
          ...(fact.answers ?? []).map((one) => said(`${one.question} ${one.answer}`, one.remark)),
          fact.remark,
          fact.hand,
        ),
      ),
    ),
  }
}

const line = (what: string, words: string, open = false): ProofLine => ({ what: upper(what), words, open })
const said = (...parts: readonly (string | false | null | undefined)[]): string =>
  parts.filter(Boolean).join(', ')
const upper = (words: string) => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`
const day = (at: string | null): string | null => at?.slice(0, 10) ?? null
const clockText = (text: string): string => (/o.clock/.test(text) ? text : `${text} on the clock`)
/** Entries are counted from 1 where people read them. */
const number = (entry: number | string): string => (typeof entry === 'number' ? String(entry + 1) : entry)

function found({
  hole,
  shims,
  remark,
}: Pick<JobState['asFound'][number], 'hole' | 'shims' | 'remark'>): readonly (string | undefined)[] {
  const stacks = (shims ?? []).map(
    ({ at, thicknesses }) => `shims at ${at}: ${thicknesses.map(({ text }) => text).join(' + ') || 'none'}`,
  )
  return [hole && `hole ${hole}`, ...stacks, remark]
}

/** What was said last of each system: "to do" gives way to "done". */
const latest = <F extends { readonly what: string; readonly remark?: string | undefined }>(
  facts: readonly F[],
): readonly F[] =>
  facts.filter(
    (fact, i) => fact.what === 'other' || !facts.slice(i + 1).some(({ what }) => what === fact.what),
  )

/** Names of the corner models; what they lack is called by its id. */
function names(sources: SheetSources) {
  const plain = (id: string) => id.replaceAll('-', ' ')
  const at = (wheel: WheelName | undefined) =>
    wheel ? cornerAt(sources, wheelPlace(wheel).axle) : sources.corners.front
  return {
    adjuster: (id: string, wheel: WheelName) => {
      const corner = at(wheel)
      const all = corner ? [...adjustersOf(corner), ...axleAdjustersOf(corner)] : []
      return all.find((one) => one.id === id)?.name ?? plain(id)
    },
    joint: (id: string, wheel: WheelName | undefined) => at(wheel)?.joints[id]?.name ?? plain(id),
    part: (id: string, wheel: WheelName | undefined) => at(wheel)?.parts[id]?.name ?? plain(id),
  }
}
