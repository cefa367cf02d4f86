// The Matrix surface: connects, hears what is said in its rooms, and has it answered.

// Parts of the SDK take the console for their own when they are loaded.
import './client/quiet.ts'
import { ClientEvent, HttpApiEvent, type MatrixClient, PendingEventOrdering, RoomEvent, SyncState } from 'matrix-js-sdk'
import type { Surface } from '../assistant/running/assistant.ts'
import { createLanes } from '../ground/lanes.ts'
import { EndingError } from '../program/ending.ts'
import { describeError } from '../program/log.ts'
import { type OpenClient, openClient } from './client/client.ts'
import { createDirectRoom, type DirectRoom } from './client/direct-rooms.ts'
import { secureIdentity } from './client/identity.ts'
import { occasionOf } from './client/occasion.ts'
import type { MatrixParts } from './client/parts.ts'
import { persistenceOf } from './client/persistence.ts'
import { acceptVerification } from './client/verification.ts'
import { createSendDocuments } from './messages/documents.ts'
import { createShowPictures } from './messages/pictures.ts'
import { createSender, type Sender } from './messages/send.ts'
import { createSpeaker } from './messages/speak.ts'
import { createUpload } from './messages/upload.ts'
import { createConversation } from './rooms/conversation.ts'
import { createEars } from './rooms/ears.ts'
import { answerInvite, followUpgrade, forgetRoom, joinConfigured } from './rooms/rooms.ts'
import { createUndecryptable } from './rooms/undecryptable.ts'
import { createUnread } from './rooms/unread.ts'

/** Of each room at the start: what is missing is read back. */
const timelineLimit = 50
/** Invites and moves go one after another: both change what our account notes. */
const roomsLane = 'rooms'

export interface MatrixSurface extends Surface {
  /** What speaks for us in rooms, while we are connected. */
  session(): { readonly client: MatrixClient; readonly sender: Sender; readonly directRoom: DirectRoom } | undefined
}

/** `onLost` is told when message keys could not be written to disk, or our session is over: the process should then end. */
export function createMatrixSurface(parts: MatrixParts, onLost: (error: EndingError) => void): MatrixSurface {
  const { settings, folder, log } = parts
  let open: OpenClient | undefined
  let ears: ReturnType<typeof listen> | undefined
  let syncing = false

  return {
    name: 'matrix',
    async start() {
      open = await openClient(settings, folder, log, error => {
        const { message } = describeError(error)
        if (open)
          onLost(new EndingError(`The message keys of Matrix cannot be written: ${message}. Make room.`, 'full'))
      })
      const { client } = open
      const synced = firstSync(client)
      ears = listen(client, parts, synced)
      acceptVerification(client, settings.verifiers, log)
      client.on(ClientEvent.Sync, state => {
        syncing = state === SyncState.Prepared || state === SyncState.Syncing
      })
      client.on(HttpApiEvent.SessionLoggedOut, () =>
        onLost(new EndingError('The Matrix server ended our session. Start again: that logs in anew.', 'later')),
      )
      await client.startClient({ initialSyncLimit: timelineLimit, pendingEventOrdering: PendingEventOrdering.Detached })
      await synced
      await secureIdentity(client, settings, log)
    },
    async stop() {
      await ears?.stop()
      const { close } = open ?? {}
      open = undefined
      close?.()
    },
    ready: () => syncing,
    deliver: async (occasion, reply) => {
      if (!ears) throw new Error('Matrix is not connected')
      return ears.deliver(occasion, reply)
    },
    session: () =>
      open && ears && syncing ? { client: open.client, sender: ears.sender, directRoom: ears.directRoom } : undefined,
  }
}

/** Hears from now on; `stop` hears no more and resolves when all heard before is answered. */
function listen(
  client: MatrixClient,
  { settings, assistant, answered, draw, log }: MatrixParts,
  synced: Promise<void>,
) {
  const onFault = (fault: unknown) => log.error({ error: describeError(fault) }, 'a Matrix event was not handled')
  const lanes = createLanes(onFault)
  const persistence = persistenceOf(client, log)
  const sender = createSender(client, persistence)
  const speaker = createSpeaker(
    client,
    sender,
    (room, asker) => assistant.localeOf(occasionOf(client, room, asker)),
    log,
  )
  const upload = createUpload(client, persistence)
  const showPictures = createShowPictures({ sender, upload, answered, draw })
  const sendDocuments = createSendDocuments(sender, upload, answered)
  const directRoom = createDirectRoom(client, persistence, log)
  const roomParts = { client, persistence, rule: settings.invites, rooms: settings.rooms, log }
  const undecryptable = createUndecryptable(speaker, onFault)
  const { converse, isUrgent, deliver } = createConversation({
    client,
    settings,
    assistant,
    answered,
    log,
    speaker,
    showPictures,
    sendDocuments,
    directRoom,
  })
  const unread = createUnread(client, persistence, log)
  const ears = createEars({
    client,
    bots: settings.bots,
    answered,
    unread,
    undecryptable,
    lanes,
    synced,
    converse,
    isUrgent,
    onFault,
  })
  let listening = true

  client.on(RoomEvent.Timeline, (event, room, toStartOfTimeline, removed, { liveEvent }) => {
    if (!listening || !room || toStartOfTimeline || removed || !liveEvent) return
    if (event.getType() === 'm.room.tombstone') lanes.add(roomsLane, () => followUpgrade(roomParts, room))
    ears.hear(room)
  })
  client.on(RoomEvent.MyMembership, (room, membership) => {
    if (!listening) return
    if (membership === 'invite') lanes.add(roomsLane, () => answerInvite(roomParts, room))
    if (membership === 'leave' || membership === 'ban')
      lanes.add(room.roomId, async () => {
        ears.forget(room)
        lanes.add(roomsLane, () => forgetRoom(roomParts, room))
      })
  })
  const followAll = async () => {
    for (const room of client.getRooms()) await followUpgrade(roomParts, room)
    await joinConfigured(roomParts)
  }
  synced.then(
    () => lanes.add(roomsLane, followAll),
    () => {},
  )

  return {
    sender,
    directRoom,
    deliver,
    async stop() {
      listening = false
      ears.stop()
      persistence.close()
      undecryptable.stop()
      await lanes.settled()
    },
  }
}

/** Rejects where the server does not know our session. */
function firstSync(client: MatrixClient): Promise<void> {
  return new Promise((resolve, reject) => {
    client.on(ClientEvent.Sync, state => {
      if (state === SyncState.Prepared) resolve()
    })
    client.on(HttpApiEvent.SessionLoggedOut, reject)
  })
}
