// What in a room was not dealt with yet: everything after the mark that we leave in it, whatever a sync left out.

import { Direction, type EventTimeline, type MatrixClient, MatrixError, type Room } from 'matrix-js-sdk'
import type { Persistence } from '../../ground/persistence.ts'
import { describeError, type Log } from '../../program/log.ts'
import { joinedAt_ms } from '../client/room-facts.ts'

/** As many events as servers give at once. */
const page = 100
/** What was said at the same moment may be read back in another order: so much before the mark is looked at again. */
const astray_ms = 10_000
/** Where no mark tells what was dealt with. */
const longest_ms = 86_400_000

export function createUnread(client: MatrixClient, persistence: Persistence, log: Log) {
  const latest = new Map<string, string | undefined>()
  /** A sync that leaves a gap begins another. */
  const read = new WeakSet<EventTimeline>()

  /** False where there is nothing before it, or the server gives nothing. */
  async function readBack(timeline: EventTimeline): Promise<boolean> {
    if (!timeline.getPaginationToken(Direction.Backward)) return false
    try {
      return await persistence.run(() => client.paginateEventTimeline(timeline, { backwards: true, limit: page }))
    } catch (error) {
      if (!(error instanceof MatrixError)) throw error
      log.warn({ room: timeline.getRoomId(), error: describeError(error) }, 'what a sync left out cannot be read back')
      return false
    }
  }

  async function after(last: string | undefined, from_ms: number, timeline: EventTimeline) {
    const afterLast = () => timeline.getEvents().findLastIndex(event => event.getId() === last) + 1
    // One event alone may bear a wrong time: the whole page has to be that old.
    const isOld = () =>
      timeline
        .getEvents()
        .slice(0, page)
        .every(event => event.getTs() < from_ms)
    while (afterLast() === 0 && !isOld() && (await readBack(timeline)));
    const events = timeline.getEvents()
    const next = afterLast()
    latest.set(timeline.getRoomId() ?? '', events.at(-1)?.getId() ?? last)
    if (next > 0 && read.has(timeline)) return events.slice(next)
    read.add(timeline)
    const mark = events[next - 1]
    if (!mark) return events.filter(event => event.getTs() >= from_ms)
    const astray = events.slice(0, next - 1).filter(event => event.getTs() >= mark.getTs() - astray_ms)
    return [...astray, ...events.slice(next)]
  }

  return {
    /** Each event once, oldest first; what a gap left out is read back from the server. */
    async in(room: Room) {
      const { roomId, myUserId } = room
      const marked = room.getAccountData('m.fully_read')?.getContent().event_id
      const last = latest.get(roomId) ?? marked ?? room.getMember(myUserId)?.events.member?.getId()
      const oldest_ms = marked === undefined ? Date.now() - longest_ms : 0
      return after(last, Math.max(joinedAt_ms(room) ?? 0, oldest_ms), room.getLiveTimeline())
    },
    forget: ({ roomId }: Room) => void latest.delete(roomId),
    /** All that was given was dealt with: noted in our account on the server, it outlives the process and the data folder. */
    async mark({ roomId }: Room) {
      const last = latest.get(roomId)
      if (last !== undefined) await client.setRoomReadMarkers(roomId, last)
    },
  }
}

export type Unread = ReturnType<typeof createUnread>
