// The noticeboard of the room: cards and reminders are printed, and what was printed stays.

import type { Noticeboard } from '../assistant/cards/noticeboard.ts'
import type { Reply } from '../assistant/reply.ts'

/** `print` shows a reply under a line that says what it is. */
export function createRoomNoticeboard(print: (heading: string, reply: Reply) => void): Noticeboard {
  let count = 0
  return {
    ready: () => true,
    post: async (place, { reply, calls }) => {
      count += 1
      print(calls === undefined ? 'On the board' : 'Reminder', reply)
      return { place, message: `room:notice-${count}` }
    },
    edit: async (_, reply) => {
      print('Changed on the board', reply)
      return 'edited'
    },
    pin: async () => 'pinned',
    remove: async () => {},
    direct: async (_, { reply }) => {
      print('Reminder', reply)
      return 'sent'
    },
  }
}
