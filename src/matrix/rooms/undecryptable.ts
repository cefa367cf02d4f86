// Messages whose key has not reached us: waited for, and said once in a room where it does not come.

import { type MatrixEvent, MatrixEventEvent, type Room } from 'matrix-js-sdk'
import { renderText } from '../messages/render.ts'
import type { Speaker } from '../messages/speak.ts'

export interface Undecryptable {
  /** Calls `decrypted` when the key comes; when it does not come soon, says so in the room, once. */
  await(event: MatrixEvent, room: Room, decrypted: () => void): void
  /** Waits no longer. */
  stop(): void
}

/** Keys often come some seconds after the message. */
const patience_ms = 10_000

const words =
  'I could not read a message here, because its encryption key has not reached me. Please ask again. If that ' +
  'does not help, check in your app whether it sends keys to verified devices only, and verify mine.'

export function createUndecryptable(
  speaker: Speaker,
  onFault: (fault: unknown) => void,
  wait_ms = patience_ms,
): Undecryptable {
  const told = new Set<string>()
  const timers = new Set<NodeJS.Timeout>()

  function say(event: MatrixEvent, room: Room): void {
    if (!event.isDecryptionFailure() || told.has(room.roomId)) return
    told.add(room.roomId)
    speaker.answer(event, room, renderText(words), `undecryptable in ${room.roomId}`).catch(onFault)
  }

  return {
    await(event, room, decrypted) {
      const timer = setTimeout(() => {
        timers.delete(timer)
        say(event, room)
      }, wait_ms)
      timers.add(timer)
      const listener = () => {
        if (event.isDecryptionFailure()) return
        event.off(MatrixEventEvent.Decrypted, listener)
        decrypted()
      }
      event.on(MatrixEventEvent.Decrypted, listener)
    },
    stop() {
      for (const timer of timers) clearTimeout(timer)
    },
  }
}
