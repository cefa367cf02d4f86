// A real Matrix surface on the requests of a homeserver, with a room that it is in.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Assistant } from '../../../src/assistant/running/assistant.ts'
import { createMatrixSurface } from '../../../src/matrix/surface.ts'
import type { Memory } from '../../../src/memory/memory.ts'
import type { Log } from '../../../src/program/log.ts'
import { ada, event, joined, member, self, text } from './events.ts'
import { type Homeserver, homeserverOnNock, type Sent } from './homeserver-on-nock.ts'

const room = '!direct:club.test'

export interface OnNock {
  readonly homeserver: Homeserver
  /** Says it in a direct room with us; gives the id of the event. */
  say(words: string): string
  /** The messages that we tried to send, oldest first. */
  sent(): readonly Sent[]
  /** Ends what is under way first. */
  close(): Promise<void>
}

export async function openOnNock(assistant: Assistant, { answered }: Memory, log: Log): Promise<OnNock> {
  const homeserver = homeserverOnNock()
  const folder = mkdtempSync(join(tmpdir(), 'matrix-on-nock-'))
  const draw = async () => new Uint8Array([0x89, 0x50, 0x4e, 0x47])
  const { settings } = homeserver
  const surface = createMatrixSurface({ settings, folder, assistant, answered, draw, log }, () => {})
  const create = event('m.room.create', { room_version: '10', creator: ada }, { state_key: '' })
  homeserver.first(joined(room, [], [create, member(ada, 1), member(self, 1)]))
  await surface.start()
  return {
    homeserver,
    say(words) {
      const said = text(words)
      homeserver.sync(joined(room, [said]))
      return said.event_id
    },
    sent: () => homeserver.requests.filter(({ path }) => path.includes('/send/m.room.message/')),
    async close() {
      await surface.stop()
      homeserver.close()
      rmSync(folder, { recursive: true })
    },
  }
}
