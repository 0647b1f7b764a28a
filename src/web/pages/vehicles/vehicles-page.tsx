import { useEffect, useState } from 'react'
import { startingLayout, startingLayouts } from '../../../corner/index.ts'
import { askKeeper } from '../../keep/keep-hand.ts'
import type { PageProps } from '../../shell/page-props.ts'
import type { Plain } from '../../state/messages.ts'
import { firstHand } from '../../state/use-hand.ts'
import { useWorkshopFiles } from '../../state/use-workshop-files.ts'
import { Beside } from '../beside.tsx'
import { saveFile } from '../jobs/save-file.ts'
import { ToldLines } from '../told-lines.tsx'
import { CornerForm } from './corner-form.tsx'

/** A corner model that is being changed: where it comes from, and for which axle of which job. */
interface Chosen {
  readonly key: string
  readonly file: unknown
  readonly role: 'front' | 'rear' | null
}

/** Corner models of the workshop: copied from a layout, measured, changed, kept. */
export function VehiclesPage(page: PageProps) {
  const { address, kept, go } = page
  const job = kept.rows?.find(({ id }) => id === address.stage) ?? null
  const { workshop, files } = useWorkshopFiles()
  const [chosen, setChosen] = useState<Chosen | null>(null)
  const [ofJob, setOfJob] = useState<readonly Chosen[]>([])
  const [told, setTold] = useState<readonly string[]>([])
  const id = job?.id ?? null
  useEffect(() => {
    document.title = 'Vehicles · Axlewright'
    if (id === null) return
    askKeeper('filesOf', { job: id }).then(
      (back) =>
        setOfJob(
          back.files.flatMap(({ role, file, digest }) =>
            role === 'front' || role === 'rear' ? [{ key: digest, file, role }] : [],
          ),
        ),
      (why: Plain) => setTold([why.sentence, why.remedy]),
    )
  }, [id])
  const save = async (file: unknown) => {
    try {
      const { saved } = await askKeeper('saveFile', { what: 'corner', file })
      if (!saved) return false
      if (id && chosen?.role) {
        const hand = firstHand() ?? 'not said'
        const { row } = await askKeeper('workWith', { job: id, role: chosen.role, id: saved.id, hand })
        kept.update(row)
        go(id, 'angles')
        return true
      }
      setTold(['Kept. New jobs can be opened with it.'])
      setChosen(null)
      return true
    } catch (why) {
      const { sentence, remedy } = why as Plain
      setTold([sentence, remedy])
      return false
    }
  }
  const own = files.filter(({ what }) => what === 'corner')
  const row = (one: Chosen, name: string, says: string) => (
    <li key={one.key}>
      <button type="button" className="bare layout-row vehicle-row" onClick={() => setChosen(one)}>
        <strong>{name}</strong>
        <span>{says}</span>
      </button>
    </li>
  )
  const textOf = (file: unknown, member: string) => String((file as Record<string, unknown>)[member] ?? '')
  return (
    <Beside here="vehicles" title={job ? `Corner models of ${job.vehicle}` : 'Vehicles'} page={page}>
      <ToldLines lines={told} />
      {workshop === null && (
        <p className="beside-note">
          This device belongs to no workshop yet, so nothing can be kept for it. Say under Workshop what it is
          called, or open a first job.
        </p>
      )}
      {chosen ? (
        <CornerForm
          key={chosen.key}
          start={chosen.file}
          place={chosen.role ? `${id} ${chosen.role}` : chosen.key}
          onSave={save}
          onBack={() => setChosen(null)}
          onExport={(file) =>
            saveFile(
              `${textOf(file, 'id')}.corner.json`,
              new TextEncoder().encode(`${JSON.stringify(file, null, 2)}\n`),
            )
          }
        />
      ) : (
        <>
          <p className="beside-note">
            A corner model is a layout with the points of one vehicle. Measure those that you can reach, mid
            axle and from the ground; what you cannot measure stays typical, with a large spread.
          </p>
          {ofJob.length > 0 && (
            <section aria-label="Of this job">
              <h2>Of this job</h2>
              <ul className="layouts">
                {ofJob.map((one) => row(one, textOf(one.file, 'name'), `${one.role} axle`))}
              </ul>
            </section>
          )}
          {own.length > 0 && (
            <section aria-label="Of the workshop">
              <h2>Of the workshop</h2>
              <ul className="layouts">
                {own.map((one) =>
                  row(
                    { key: one.digest, file: one.file, role: null },
                    textOf(one.file, 'name'),
                    textOf(one.file, 'source'),
                  ),
                )}
              </ul>
            </section>
          )}
          <section aria-label="Layouts to start from">
            <h2>Layouts to start from</h2>
            <ul className="layouts">
              {startingLayouts.map((layout) => (
                <li key={layout.id}>
                  <button
                    type="button"
                    className="bare layout-row vehicle-row"
                    onClick={async () =>
                      setChosen({ key: layout.id, file: await copyOf(layout.id), role: null })
                    }
                  >
                    <strong>{layout.name}</strong>
                    <span>{layout.says}</span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
        </>
      )}
    </Beside>
  )
}

/** A layout as the beginning of a model of one's own. */
async function copyOf(layout: string): Promise<unknown> {
  const file = (await startingLayout(layout)) as Record<string, unknown>
  return { ...file, id: `own-${layout}`, name: `${String(file['name'])}, of ours` }
}
