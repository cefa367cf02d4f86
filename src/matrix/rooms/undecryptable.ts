// Messages whose key has not reached us: waited for, and said once in a room where it does not come.

import { type MatrixEvent, MatrixEventEvent, type Room } from 'matrix-js-sdk'
import { callOf } from '../messages/message.ts'
import type { Speaker } from '../messages/speak.ts'
import { keyMissing } from '../messages/told.words.ts'

/** Keys often come some seconds after the message. */
const patience_ms = 10_000

export function createUndecryptable(speaker: Speaker, onFault: (fault: unknown) => void, wait_ms = patience_ms) {
  const told = new Set<string>()
  const timers = new Set<NodeJS.Timeout>()

  function say(event: MatrixEvent, room: Room): void {
    if (!event.isDecryptionFailure() || told.has(room.roomId)) return
    told.add(room.roomId)
    speaker.tell(callOf(event, room), room, keyMissing, `undecryptable in ${room.roomId}`).catch(onFault)
  }

  return {
    /** Calls `decrypted` when the key comes; when it does not come soon, says so in the room, once. */
    await(event: MatrixEvent, room: Room, decrypted: () => void) {
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
    /** Waits no longer. */
    stop() {
      for (const timer of timers) clearTimeout(timer)
    },
  }
}

export type Undecryptable = ReturnType<typeof createUndecryptable>
