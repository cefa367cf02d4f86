// What a text message says, taken from its event: also of one that edits another.

import type { MatrixEvent, Room } from 'matrix-js-sdk'
import type { Message } from './asking.ts'

/** The message or reaction that an answer is for. */
export interface Call {
  readonly event: string
  readonly asker: string
  /** To which the answer replies; nothing where it stands in another room. */
  readonly about?: string | undefined
  readonly thread?: string | undefined
}

export function callOf(event: MatrixEvent, room: Room, about = event.getId() ?? ''): Call {
  const thread = threadOf(room.findEventById(about) ?? event)
  return { event: event.getId() ?? '', asker: event.getSender() ?? '', about, thread }
}

/** Undefined where the event holds no text. An edit speaks with its new words, in reply to what `original` was. */
export function messageIn(event: MatrixEvent, original: MatrixEvent | undefined = event): Message | undefined {
  const content = event.getOriginalContent()
  const { body, 'm.mentions': mentions } = content['m.new_content'] ?? content
  if (typeof body !== 'string') return undefined
  const people = mentions?.user_ids
  return {
    body,
    mentions: mentions === undefined ? undefined : Array.isArray(people) ? people : [],
    repliesTo: original && repliesTo(original),
    thread: original && threadOf(original),
  }
}

/** The root of the thread that the message stands in. */
const threadOf = (event: MatrixEvent): string | undefined => {
  const relation = event.getWireContent()['m.relates_to']
  return relation?.rel_type === 'm.thread' ? relation.event_id : undefined
}

function repliesTo(event: MatrixEvent): string | undefined {
  const to = event.getWireContent()['m.relates_to']?.['m.in_reply_to']?.event_id
  return typeof to === 'string' ? to : undefined
}
