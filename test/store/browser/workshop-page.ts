// Runs in a page: the device's key and the workshop, as a page would set them up.
import {
  askPersistence,
  beginWorkshop,
  browserDevice,
  browserStore,
  ownWorkshop,
  roomLeft,
} from '../../../src/store/browser/index.ts'
import { refusal } from '../log-store-contract.ts'

Object.assign(globalThis, {
  calls: {
    device: async (name: string) => (await browserDevice(name)).key,
    signed: async (name: string, said: number[]) => (await browserDevice(name)).sign(Uint8Array.from(said)),
    begin: async (name: string, workshop: string, called: string) =>
      beginWorkshop(browserStore(name), { name: workshop, called, device: await browserDevice(name) }),
    refused: (name: string) =>
      refusal(async () =>
        beginWorkshop(browserStore(name), {
          name: 'Quay garage',
          called: 'bay 1',
          device: await browserDevice(name),
        }),
      ),
    own: (name: string) => ownWorkshop(browserStore(name)),
    persistence: askPersistence,
    room: roomLeft,
  },
})
