// A rendered reply as the content of a Matrix event: in answer to a question, or in place of an earlier answer.

export interface Reference {
  /** The message that asked; none where that stands in another room. */
  readonly question: string | undefined
  /** The only one mentioned; nobody when absent. */
  readonly asker?: string
  /** The root of the thread in which it was asked. */
  readonly thread: string | undefined
}

export function answerContent<T extends object>(said: T, { question, asker, thread }: Reference) {
  const reply = { 'm.in_reply_to': { event_id: question } }
  const relation = thread === undefined ? reply : { rel_type: 'm.thread', event_id: thread, ...reply }
  return { ...said, 'm.mentions': mentions(asker), 'm.relates_to': question === undefined ? undefined : relation }
}

/** An edit mentions nobody anew; apps without edits show the line behind the star. */
export function editContent<T extends { readonly msgtype: string; readonly body: string }>(
  said: T,
  answer: string,
  asker?: string,
) {
  const [headline = ''] = said.body.split('\n', 1)
  return {
    msgtype: 'm.text',
    body: `* ${headline}`,
    'm.mentions': {},
    'm.new_content': { ...said, 'm.mentions': mentions(asker) },
    'm.relates_to': { rel_type: 'm.replace', event_id: answer },
  }
}

const mentions = (person: string | undefined) => (person === undefined ? {} : { user_ids: [person] })
