// Where the assistant speaks first: cards that it keeps up to date, and reminders. One port, a board for each platform.

import type { Said } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { Asked, SurfaceName } from '../occasion.ts'
import type { Reply } from '../reply.ts'
import { onlyAnswers } from './cards.words.ts'

export interface Notice {
  readonly reply: Reply
  /** A notice of the same key that comes again within minutes is not shown again. */
  readonly key: string
  /** The people whose attention it wants. */
  readonly calls?: readonly string[]
  /** To be followed from below it. */
  readonly links?: readonly string[]
}

/** A message of ours that stands somewhere. */
export interface Posted {
  readonly place: string
  readonly message: string
  /** Where the platform has links to messages. */
  readonly link?: string
}

interface Struck {
  readonly link?: string
  /** Who had asked for it, where the platform tells. */
  readonly asker?: string | undefined
}

/** What cannot be done, and in one plain sentence what is missing for it. */
export interface Missing {
  readonly missing: Said
}

/** Ids of places, messages and people are those that the surface gives them. Faults of the platform reject. */
export interface Noticeboard {
  /** False while the platform is not connected. */
  ready(): boolean
  post(place: string, notice: Notice): Promise<Posted | Missing>
  /** `gone` where people have deleted the message, or it is none of ours. */
  edit(posted: Posted, reply: Reply): Promise<'edited' | 'gone'>
  pin(posted: Posted): Promise<'pinned' | Missing>
  /** Takes the message away, and its pin with it. One that is gone is fine. */
  remove(posted: Posted): Promise<void>
  /** Strikes through what the message says, below a line that says why; nothing can be tapped on it any longer. */
  strike(posted: Posted, why: Text): Promise<Struck | 'gone'>
  direct(person: string, notice: Notice): Promise<'sent' | Missing>
  /** To the answer that others see, where only it has a link to itself; `soon` while there is none yet. */
  linkOf?(asked: Pick<Asked, 'way' | 'link'>): Promise<string | 'soon' | undefined>
  /** Who is told where moderators cannot be; nobody where absent. */
  ownerOf?(community: string): Promise<string>
}

/** The boards of all platforms as one: an id begins with its surface. */
export interface Noticeboards extends Omit<Noticeboard, 'ready' | 'linkOf' | 'ownerOf'> {
  add(surface: SurfaceName, board: Noticeboard): void
  /** The surfaces that notices reach now. */
  reachable(): readonly SurfaceName[]
  /** As the board of that place has it. */
  linkOf(place: string, asked: Pick<Asked, 'way' | 'link'>): Promise<string | 'soon' | undefined>
  ownerOf(community: string): Promise<string | undefined>
}

export function createNoticeboards(): Noticeboards {
  const boards = new Map<SurfaceName, Noticeboard>()
  const reached = (id: string) => {
    const board = boards.get(surfaceOf(id))
    return board?.ready() ? board : undefined
  }
  return {
    add: (surface, board) => void boards.set(surface, board),
    reachable: () => [...boards].filter(([, board]) => board.ready()).map(([surface]) => surface),
    post: async (place, notice) => reached(place)?.post(place, notice) ?? unreached,
    edit: async (posted, reply) => {
      const board = reached(posted.place)
      if (!board) throw new Error(`no way to ${surfaceOf(posted.place)} now`)
      return board.edit(posted, reply)
    },
    pin: async posted => reached(posted.place)?.pin(posted) ?? unreached,
    strike: async (posted, why) => reached(posted.place)?.strike(posted, why) ?? 'gone',
    remove: async posted => reached(posted.place)?.remove(posted),
    linkOf: async (place, asked) => reached(place)?.linkOf?.(asked),
    ownerOf: async community => reached(community)?.ownerOf?.(community),
    direct: async (person, notice) => reached(person)?.direct(person, notice) ?? unreached,
  }
}

export const surfaceOf = (id: string): SurfaceName => (id.split(':', 1)[0] ?? id) as SurfaceName
const unreached: Missing = { missing: onlyAnswers }
