// Events as a Matrix homeserver hands them out: one member, the assistant, and what they say.

export const self = '@chargehand:club.test'
export const ada = '@ada:club.test'

let events = 0
export const event = (type: string, content: object, more: object = {}) => ({
  type,
  content,
  sender: ada,
  event_id: `$event-${++events}`,
  origin_server_ts: Date.now(),
  ...more,
})

export const text = (body: string, more: object = {}) => event('m.room.message', { msgtype: 'm.text', body }, more)

export const member = (person: string, at_ms: number) =>
  event(
    'm.room.member',
    { membership: 'join', displayname: person === ada ? 'Ada' : 'Chargehand' },
    { sender: person, state_key: person, origin_server_ts: at_ms },
  )

/** What a sync says of a room that both are in. */
export const joined = (room: string, timeline: readonly object[], state: readonly object[] = []) => ({
  rooms: { join: { [room]: { timeline: { events: timeline, limited: false }, state: { events: state } } } },
})
