// A rendered reply as the content of a Matrix event: in answer to a question, or in place of an earlier answer.

import type { Rendered } from './render.ts'

/** What an answer refers to. */
export interface Reference {
  /** The message that asked. */
  readonly question: string
  /** The only one mentioned. */
  readonly asker: string
  /** The root of the thread in which it was asked. */
  readonly thread: string | undefined
}

export function answerContent<T extends object>(rendered: T, { question, asker, thread }: Reference) {
  const reply = { 'm.in_reply_to': { event_id: question } }
  return {
    ...rendered,
    'm.mentions': { user_ids: [asker] },
    'm.relates_to': thread === undefined ? reply : { rel_type: 'm.thread', event_id: thread, ...reply },
  }
}

/** An edit mentions nobody anew; apps without edits show the line behind the star. */
export function editContent(rendered: Rendered, answer: string, asker: string) {
  const [headline = ''] = rendered.body.split('\n', 1)
  return {
    msgtype: rendered.msgtype,
    body: `* ${headline}`,
    'm.mentions': {},
    'm.new_content': { ...rendered, 'm.mentions': { user_ids: [asker] } },
    'm.relates_to': { rel_type: 'm.replace', event_id: answer },
  }
}
