import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import type { PlanSheet } from '../../sheet/index.ts'
import { keepPlan, keptPlan } from './kept-plan.ts'
import type { Plain } from './messages.ts'
import { type PlanHand, planHand } from './plan-hand.ts'
import { noChoice, type PlanAnswer, type PlanChoice } from './plan-messages.ts'
import type { OpenJob } from './use-job.ts'

/** The plan of a job on the page. */
export interface OpenPlan {
  readonly sheet: PlanSheet | null
  readonly choice: PlanChoice
  /** Not yet the plan of what was chosen. */
  readonly working: boolean
  readonly trouble: Plain | null
  /** False when this device refuses to keep anything. */
  readonly kept: boolean
  /** How many moves of lines can be taken back. */
  readonly moves: number
  choose(change: Partial<PlanChoice>): void
  reorder(order: readonly string[]): void
  takeBack(): void
}

interface Chosen {
  readonly choice: PlanChoice
  /** Orders before each move, newest last; not kept. */
  readonly before: readonly PlanChoice['order'][]
}

/** Holds a job's plan open: what was chosen kept on this device, the plan worked out in a worker of its own. */
export function usePlan(job: OpenJob, id: string): OpenPlan {
  const mark = job.row?.mark ?? (job.isRead ? '' : null)
  const version = job.row?.version ?? ''
  const [chosen, setChosen] = useState<Readonly<Record<string, Chosen>>>({})
  const [answered, setAnswered] = useState<{ job: string; choice: PlanChoice; answer: PlanAnswer } | null>(
    null,
  )
  const [good, setGood] = useState<{ job: string; sheet: PlanSheet } | null>(null)
  const [broken, setBroken] = useState<Plain | null>(null)
  const [kept, setKept] = useState(true)
  const hand = useRef<PlanHand | null>(null)
  const asked = useRef<{ job: string; choice: PlanChoice } | null>(null)
  const now = useMemo(
    () => chosen[id] ?? { choice: mark === null ? noChoice : keptPlan({ job: id, mark }), before: [] },
    [chosen, id, mark],
  )
  const { choice } = now

  useEffect(() => {
    const one = planHand({
      answer: (answer) => {
        const question = asked.current
        if (!question) return
        setAnswered({ ...question, answer })
        if (answer.sheet) setGood({ job: question.job, sheet: answer.sheet })
      },
      broken: (reason) =>
        setBroken({
          sentence: `The part of this page that plans has stopped${reason ? ` (${reason})` : ''}.`,
          remedy: 'Load the page again; what was chosen is kept.',
        }),
    })
    hand.current = one
    return () => one.end()
  }, [])

  const { edits } = job
  useEffect(() => {
    if (mark === null) return
    asked.current = { job: id, choice }
    hand.current?.ask({ job: id, version, edits, choice })
  }, [id, version, edits, choice, mark])

  const set = useCallback(
    (next: Chosen) => {
      if (mark === null) return
      setChosen((all) => ({ ...all, [id]: next }))
      setKept(keepPlan({ job: id, mark }, next.choice))
    },
    [id, mark],
  )
  const current = answered?.job === id && answered.choice === choice ? answered.answer : null
  return {
    sheet: good?.job === id ? good.sheet : null,
    choice,
    working: current === null,
    trouble: broken ?? current?.trouble ?? null,
    kept,
    moves: now.before.length,
    choose: (change) => set({ choice: { ...choice, order: null, longer: false, ...change }, before: [] }),
    reorder: (order) => set({ choice: { ...choice, order }, before: [...now.before, choice.order] }),
    takeBack: () => {
      const order = now.before.at(-1) ?? null
      set({ choice: { ...choice, order }, before: now.before.slice(0, -1) })
    },
  }
}
