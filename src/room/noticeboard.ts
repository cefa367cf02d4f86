// The noticeboard of the room: cards and reminders are printed, and what was printed stays.

import type { Noticeboard } from '../assistant/cards/noticeboard.ts'
import type { Reply } from '../assistant/reply.ts'
import type { Text } from '../ground/text.ts'
import { headings } from './room.words.ts'

/** `print` shows a reply under a line that says what it is. */
export function createRoomNoticeboard(print: (heading: Text, reply: Reply) => void): Noticeboard {
  let count = 0
  return {
    ready: () => true,
    post: async (place, { reply, calls }) => {
      count += 1
      const { board, reminder } = headings(reply.locale)
      print(calls === undefined ? board : reminder, reply)
      return { place, message: `room:notice-${count}` }
    },
    edit: async (_, reply) => {
      print(headings(reply.locale).changed, reply)
      return 'edited'
    },
    pin: async () => 'pinned',
    strike: async () => 'gone',
    remove: async () => {},
    direct: async (_, { reply }) => {
      print(headings(reply.locale).reminder, reply)
      return 'sent'
    },
  }
}
