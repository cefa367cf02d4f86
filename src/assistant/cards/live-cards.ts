// The live cards of standard answers: posted and pinned once, edited where what they show has changed.

import { randomUUID } from 'node:crypto'
import type { Locale } from '../../ground/locale.ts'
import { present } from '../../ground/present.ts'
import { joined } from '../../ground/text.ts'
import type { HistoryMemory, HouseRules, QuestionMemory } from '../../memory/memory.ts'
import type { AnswerMemory, Card, StandardAnswer } from '../../memory/standard-answer.ts'
import type { Cards, Standing } from '../cards.ts'
import type { FaultListener } from '../fault-listener.ts'
import type { Reply } from '../reply.ts'
import { cardOf, digestOf } from './card.ts'
import { leftBehind, notTaken } from './cards.words.ts'
import { type Missing, type Noticeboards, type Posted, surfaceOf } from './noticeboard.ts'
import { createTurnstile } from './turnstile.ts'

interface CardParts {
  readonly answers: AnswerMemory
  readonly questions: QuestionMemory
  readonly history: HistoryMemory
  readonly noticeboard: Noticeboards
  /** Answers for the club: without anybody's own kit, and without a clock. */
  readonly ask: (community: string, question: string, rules?: HouseRules) => Promise<Reply>
  readonly localeOf: (community: string) => Promise<Locale>
  readonly clock: () => Date
  readonly onFault: FaultListener
}

/** Between two edits of a card, however often what it shows changes. */
const pause_ms = 60_000

export function createCards({
  answers,
  questions,
  history,
  noticeboard,
  ask,
  localeOf,
  clock,
  onFault,
}: CardParts): Cards {
  const myTurn = createTurnstile()
  const render: Cards['render'] = async (community, saying, rules) => {
    const last = saying.id === undefined ? undefined : await history.ofAnswer(community, saying.id)
    return cardOf(saying, question => ask(community, question, rules), await localeOf(community), last)
  }

  /** A platform that fails costs the card, not the answer that it shows. */
  async function tried<T>(attempt: Promise<T | Missing>): Promise<T | Missing> {
    try {
      return await attempt
    } catch (fault) {
      onFault(fault, 'a card')
      return { missing: notTaken }
    }
  }

  async function post(id: string, place: string): Promise<Standing> {
    const answer = await answers.get(id)
    if (!answer) return nowhere
    const reply = await render(answer.community, answer)
    const posted = await tried(noticeboard.post(place, { reply, key: randomUUID() }))
    if ('missing' in posted) return { ...nowhere, ...posted }
    const pinning = await tried(noticeboard.pin(posted))
    const { message, link } = posted
    const card = { message, link, pinned: pinning === 'pinned', digest: digestOf(reply) }
    if (!(await answers.settle(answer, { place, canonical: reply.question ?? '', card }))) {
      // Changed by somebody else meanwhile: this card would be a second one, or say what no longer holds.
      await tried(noticeboard.remove(posted))
      return post(id, place)
    }
    return standing(posted, pinning, await takenAway(answer))
  }

  async function restore(id: string): Promise<Standing> {
    const answer = await tried(refreshOne(id))
    if (answer && 'missing' in answer) return { ...nowhere, ...answer }
    if (!answer?.card) return answer ? post(id, answer.place) : nowhere
    const posted = postedOf(answer, answer.card)
    if (answer.card.pinned) return standing(posted, 'pinned')
    const pinning = await tried(noticeboard.pin(posted))
    if (pinning === 'pinned') {
      await answers.settle(answer, { ...answer, card: { ...answer.card, pinned: true } })
    }
    return standing(posted, pinning)
  }

  async function takenAway(answer: StandardAnswer): Promise<boolean> {
    const gone = answer.card && (await tried(noticeboard.remove(postedOf(answer, answer.card)).then(() => undefined)))
    return gone === undefined
  }

  /**
   * Gives the answer as it is then noted. `putOff` is told until when a card is left that was edited just now; without it
   * the message is edited at once, though nothing seems to have changed.
   */
  async function refreshOne(id: string, putOff?: (until: Date) => void): Promise<StandardAnswer | undefined> {
    const answer = await answers.get(id)
    if (!answer) return undefined
    const reply = await render(answer.community, answer)
    // A fault of our own says nothing about the answer: the card keeps what it says.
    if (reply.fault !== undefined) return answer
    const canonical = reply.question ?? ''
    // A card outlives the time for which the questions behind buttons are kept.
    if (canonical !== '') await questions.keep(canonical)
    const reachable = noticeboard.reachable().includes(surfaceOf(answer.place))
    const isOther = !putOff || (reachable && answer.card?.digest !== digestOf(reply))
    const free_ms = (answer.card?.editedAt?.getTime() ?? Number.NEGATIVE_INFINITY) + pause_ms
    const waits = putOff !== undefined && isOther && free_ms > clock().getTime()
    if (waits) putOff(new Date(free_ms))
    const edits = isOther && !waits
    if (!(answer.card && edits) && canonical === answer.canonical) return answer

    const card = edits ? await edited(answer, reply) : answer.card
    const noted = { place: answer.place, canonical, card }
    if (await answers.settle(answer, noted)) return answers.get(id)
    // Changed meanwhile, maybe by one whose newer words this edit has just replaced.
    return refreshOne(id)
  }

  /** The card with its new words; undefined where there is none, or none any longer. */
  async function edited(answer: StandardAnswer, reply: Reply): Promise<Card | undefined> {
    if (!answer.card) return undefined
    const outcome = await noticeboard.edit(postedOf(answer, answer.card), reply)
    return outcome === 'gone' ? undefined : { ...answer.card, digest: digestOf(reply), editedAt: clock() }
  }

  return {
    render,
    post,
    restore,
    takeAway: async answer => void (await takenAway(answer)),
    refresh: async community => {
      const left: Date[] = []
      for (const { id } of await answers.list(community)) {
        // Each is worked out anew: between them others have their turn.
        await myTurn()
        const refreshing = refreshOne(id, until => left.push(until))
        await refreshing.catch(fault => onFault(fault, 'bringing a card up to date'))
      }
      return left.toSorted((a, b) => a.getTime() - b.getTime())[0]
    },
  }
}

const nowhere: Standing = { posted: false, pinned: false }

/** `isAlone` is false where the card that stood elsewhere is still there. */
function standing({ link }: Posted, pinning: 'pinned' | Missing, isAlone = true): Standing {
  const missing = present([pinning === 'pinned' ? undefined : pinning.missing, isAlone ? undefined : leftBehind])
  return {
    posted: true,
    pinned: pinning === 'pinned',
    link,
    missing: missing.length > 0 ? locale => joined(missing.map(said => said(locale))) : undefined,
  }
}

const postedOf = ({ place }: StandardAnswer, { message, link }: Card): Posted => ({ place, message, link })
