// The ways to ask in a room: behind the prefix, by mention, in a direct message, or in reply to an answer of ours.

/** A text message, decrypted. */
export interface Message {
  readonly body: string
  /** Whom the sender's app says it mentions; absent from apps older than such mentions. */
  readonly mentions: readonly string[] | undefined
  /** The message that this one answers: in a thread maybe only the one before it, for apps without threads. */
  readonly repliesTo: string | undefined
  /** The root of the thread that it stands in. */
  readonly thread: string | undefined
}

export interface Manner {
  readonly prefix: string
  /** Our user id. */
  readonly self: string
  /** Our name in the room. */
  readonly name: string
  readonly direct: boolean
}

export interface Asking {
  /** The question without what it was addressed with. */
  readonly words: string
  /** Said to us, not merely in reply to us. */
  readonly addressed: boolean
  /** Where it may change an earlier question: the message it replies to, and the root of its thread. */
  readonly repliesTo?: string | undefined
  readonly thread?: string | undefined
}

/** Undefined where the message is talk among people. */
export function readAsking(message: Message, manner: Manner): Asking | undefined {
  const text = withoutQuote(message.body).trim()
  const prefixed = afterPrefix(text, manner.prefix)
  if (prefixed !== undefined) return { words: prefixed, addressed: true }

  const words = withoutName(text, manner)
  const mentioned = message.mentions?.includes(manner.self) ?? isCalled(text, manner)
  const addressed = mentioned || manner.direct
  const { repliesTo, thread } = message
  if (!addressed && repliesTo === undefined && thread === undefined) return undefined
  return { words: mentioned ? words : text, addressed, repliesTo, thread }
}

/** Older apps quote the message that a reply answers, line by line behind "> ", then leave a line free. */
const withoutQuote = (body: string): string => body.replace(/^(?:> .*\n)+\n?/, '')

function afterPrefix(text: string, prefix: string): string | undefined {
  if (text.slice(0, prefix.length).toLowerCase() !== prefix.toLowerCase()) return undefined
  const rest = text.slice(prefix.length)
  return rest === '' || /^\s/.test(rest) ? rest.trim() : undefined
}

/** Apps write a mention as the user id or the name, at the start often with a colon or comma. */
const callOf = ({ self, name }: Manner): string =>
  [self, `@${name}`, name]
    .filter(called => called.length > 1)
    .map(called => RegExp.escape(called))
    .join('|')

const withoutName = (text: string, manner: Manner): string =>
  text.replace(new RegExp(`(?<![\\p{L}\\d])(?:${callOf(manner)})(?![\\p{L}\\d])[:,]?`, 'iu'), '').trim()

/** For apps that do not say whom a message mentions. */
const isCalled = (text: string, manner: Manner): boolean =>
  text.includes(manner.self) || new RegExp(`^(?:${callOf(manner)})[:,]`, 'i').test(text)
