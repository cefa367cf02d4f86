// What counts as said to us: nothing from before our time, nothing twice, nothing of our own.

/** A message or reaction as it came in. */
export interface Heard {
  readonly sender: string
  /** The message type ("m.text") or, for other events, the event type ("m.reaction"). */
  readonly what: string
  /** By the clock of the sender's server. */
  readonly sentAt_ms: number
}

export interface Situation {
  readonly self: string
  /** Accounts that are known to be no people. */
  readonly bots: readonly string[]
  /** Undefined while we are not in the room. */
  readonly joinedAt_ms: number | undefined
  /** The id was seen and answered before. */
  readonly answered: boolean
}

export type Decision = 'accepted' | 'own' | 'a bot' | 'not a question' | 'before our join' | 'answered'

/** Only text asks: most bots send m.notice. What was asked may be taken away. */
const asking = ['m.text', 'm.reaction', 'm.room.redaction']

/** Whether something heard is to be acted on, and if not, why. */
export function accept({ sender, what, sentAt_ms }: Heard, situation: Situation): Decision {
  if (sender === situation.self) return 'own'
  if (situation.bots.includes(sender)) return 'a bot'
  if (!asking.includes(what)) return 'not a question'
  const { joinedAt_ms } = situation
  if (joinedAt_ms === undefined || sentAt_ms < joinedAt_ms) return 'before our join'
  return situation.answered ? 'answered' : 'accepted'
}
