// A noticeboard of the room that knows only what was posted on it, and refuses everything else.

import {
  createNoticeboards,
  type Missing,
  type Notice,
  type Noticeboards,
} from '../../src/assistant/cards/noticeboard.ts'
import type { SurfaceName } from '../../src/assistant/occasion.ts'
import type { Reply } from '../../src/assistant/reply.ts'

export interface Standing {
  readonly place: string
  readonly message: string
  reply: Reply
  pinned: boolean
  edits: number
  struck?: string
}

export interface FakeBoard {
  readonly noticeboard: Noticeboards
  /** The messages that stand, oldest first. */
  readonly standing: Standing[]
  /** What was said to people, in the order in which it was. */
  readonly notices: (Notice & { readonly place?: string; readonly person?: string })[]
  /** What does not work just now. */
  readonly hindered: { post?: string; pin?: string; direct?: string; remove?: Error; platform?: Error }
  /** Runs once, between the next edit and its arrival. */
  beforeNextEdit?: () => Promise<unknown>
  beforeNextPin?: () => Promise<unknown>
}

const missing = (words: string): Missing => ({ missing: ({ own }) => own(words) })

export function fakeBoard(surface: SurfaceName = 'room'): FakeBoard {
  const noticeboard = createNoticeboards()
  let count = 0
  const keys = new Set<string>()
  const board: FakeBoard = { noticeboard, standing: [], notices: [], hindered: {} }
  const { standing, notices, hindered } = board

  /** As a platform that knows keys does. */
  function isNew(key: string): boolean {
    if (keys.has(key)) return false
    keys.add(key)
    return true
  }
  async function reached(): Promise<void> {
    if (hindered.platform) throw hindered.platform
  }

  noticeboard.add(surface, {
    ready: () => true,
    post: async (place, notice) => {
      await reached()
      if (hindered.post !== undefined) return missing(hindered.post)
      if (!isNew(notice.key)) throw new Error(`${notice.key} was posted before`)
      count += 1
      const message = `room:message-${count}`
      standing.push({ place, message, reply: notice.reply, pinned: false, edits: 0 })
      if (notice.calls !== undefined || notice.links) notices.push({ ...notice, place })
      return { place, message, link: `https://example.org/${count}` }
    },
    edit: async ({ place, message }, reply) => {
      await reached()
      const before = board.beforeNextEdit
      delete board.beforeNextEdit
      await before?.()
      const found = standing.find(one => one.place === place && one.message === message)
      if (!found) return 'gone'
      found.reply = reply
      found.edits += 1
      return 'edited'
    },
    pin: async ({ place, message }) => {
      await reached()
      const before = board.beforeNextPin
      delete board.beforeNextPin
      await before?.()
      if (hindered.pin !== undefined) return missing(hindered.pin)
      const found = standing.find(one => one.place === place && one.message === message)
      if (!found) throw new Error(`there is no ${message} to pin`)
      if (found.pinned) throw new Error(`${message} is pinned already`)
      found.pinned = true
      return 'pinned'
    },
    strike: async ({ place, message }, why) => {
      await reached()
      const found = standing.find(one => one.place === place && one.message === message)
      if (!found) return 'gone'
      found.struck = why
      return { link: `https://example.org/${message}` }
    },
    remove: async ({ place, message }) => {
      await reached()
      if (hindered.remove) throw hindered.remove
      const at = standing.findIndex(one => one.place === place && one.message === message)
      if (at >= 0) standing.splice(at, 1)
    },
    direct: async (person, notice) => {
      await reached()
      if (hindered.direct !== undefined) return missing(hindered.direct)
      if (!isNew(notice.key)) throw new Error(`${notice.key} was sent before`)
      notices.push({ ...notice, person })
      return 'sent'
    },
  })
  return board
}
