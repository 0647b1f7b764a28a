import { useEffect, useState } from 'react'
import { startingKit } from '../../../kit/index.ts'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { PageProps } from '../../shell/page-props.ts'
import type { Plain } from '../../state/messages.ts'
import { firstHand } from '../../state/use-hand.ts'
import { useWorkshopFiles } from '../../state/use-workshop-files.ts'
import { Beside } from '../beside.tsx'
import { ToldLines } from '../told-lines.tsx'
import { KitForm } from './kit-form.tsx'

/** What the workshop owns, and how well each of it measures. */
export function KitPage(page: PageProps) {
  const { workshop, files } = useWorkshopFiles()
  const [told, setTold] = useState<readonly string[]>([])
  const [isNew, setIsNew] = useState(false)
  const open = (page.kept.rows ?? []).filter(({ line }) => line.stage !== null)
  const workWith = async () => {
    for (const { id } of open) {
      const { row } = await askKeeper('workWith', {
        job: id,
        role: 'kit',
        id: kit?.id ?? 'kit',
        hand: firstHand() ?? 'not said',
      })
      page.kept.update(row)
    }
    setIsNew(false)
    setTold([
      `Said in ${open.length === 1 ? 'the open job' : `${open.length} open jobs`}: worked with this kit from now on.`,
    ])
  }
  useEffect(() => {
    document.title = 'Kit · Axlewright'
  }, [])
  const kit = files.find(({ what }) => what === 'kit')
  const start = kit?.file ?? { ...startingKit, id: 'kit', name: workshop?.name ?? startingKit.name }
  const save = async (file: unknown) => {
    try {
      const { saved } = await askKeeper('saveFile', { what: 'kit', file })
      if (saved) setTold(['Kept. New jobs are worked with it.'])
      setIsNew(saved !== null)
      return saved !== null
    } catch (why) {
      const { sentence, remedy } = why as Plain
      setTold([sentence, remedy])
      return false
    }
  }
  return (
    <Beside here="kit" title="Kit" page={page}>
      <p className="beside-note">
        {kit
          ? 'What is owned here, and how well it measures. A better figure makes every result that rests on it surer.'
          : 'A kit to start from stands below, with errors that are usual for such gauges. Change what is otherwise, take out what you do not have, and keep it.'}
      </p>
      <ToldLines lines={told} />
      {isNew && open.length > 0 && (
        <div className="beside-do">
          <button type="button" onClick={workWith}>
            Work the open {open.length === 1 ? 'job' : `${open.length} jobs`} with it, too
          </button>
        </div>
      )}
      {workshop !== undefined && <KitForm key={kit?.digest ?? 'new'} start={start} onSave={save} />}
    </Beside>
  )
}
