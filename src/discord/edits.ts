// What people do to a question of theirs: they edit it or take it away, and its answer follows.

import { isForAsker } from '../assistant/personal.ts'
import { answerToEdit, doneBy } from '../assistant/running/after-edit.ts'
import { stillDone, stillDoneThough } from '../assistant/running/after-edit.words.ts'
import { directCommunityOf } from '../memory/owner.ts'
import { type MentionParts, type Mentions, occasionOf, type Said, wayOf } from './mentions.ts'
import { renderText } from './messages/render.ts'
import { idOf } from './platform/occasion.ts'

/** Later than this nobody reads the answer any longer who would see the edit. */
const editable_ms = 15 * 60_000

export function createEdits({ questionIn, answer, give }: Mentions, parts: MentionParts) {
  const { assistant, answered, compose, replies, speaking } = parts
  const { registry } = assistant

  return {
    /** Also of a message that was no question before. */
    async edited({ message, member }: Said) {
      const { editedTimestamp, createdTimestamp } = message
      const edited_ms = editedTimestamp ?? 0
      // An earlier edit is told again when the message is pinned.
      if (edited_ms - createdTimestamp > editable_ms || Date.now() - edited_ms > editable_ms) return
      const question = await questionIn(message)
      if (question === undefined) return
      const earlier = await answered.byQuestion(idOf(message.id))
      if (!earlier) return answer({ message, member }, question)

      const occasion = occasionOf({ message, member }, wayOf(message))
      const done = doneBy(earlier.question, registry)
      if (done) return replies.reword(earlier, renderText(stillDone(done)(await assistant.localeOf(occasion))))
      const { reply, isWorse } = await answerToEdit(earlier.question, registry, {
        before: question => assistant.answer(question, { ...occasion, asked: undefined }),
        now: () => assistant.answer(question, occasion),
      })
      const composed = await compose.dress(reply, occasion, 'brief')
      const isNowTheirs = isForAsker(reply) && earlier.place === occasion.place.id && !occasion.place.direct
      if (isWorse || isNowTheirs) {
        await give(message, occasion, composed)
        return replies.takeAway(earlier)
      }
      await replies.replace(earlier, composed)
      await assistant.delivered(occasion)
    },

    async takenAway(message: string, serverId: string | undefined) {
      const earlier = await answered.byQuestion(idOf(message))
      if (!earlier) return
      await replies.takeAway(earlier)
      const done = doneBy(earlier.question, registry)
      if (!done) return
      const community = { id: serverId === undefined ? directCommunityOf(earlier.askedBy) : idOf(serverId) }
      const told = stillDoneThough(done)(await assistant.localeOf({ community }))
      const words = { key: `${idOf(message)} gone`, message: renderText(told) }
      if (!(await speaking.alone(earlier.askedBy, words))) await speaking.inChannel(earlier.place, words)
    },
  }
}
