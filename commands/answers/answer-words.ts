// What the commands about standard answers share: who may change them, what they are made of, where they stand.

import type { Standing } from '../../src/assistant/cards/cards.ts'
import type { Context } from '../../src/assistant/context.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { NewAnswer, StandardAnswer } from '../../src/memory/stores/standard-answer.ts'

export const questionDescription = 'the question that it answers; takes all that follows, so it stands last'
export const textDescription = 'or text in your own words; takes all that follows, so it stands last'

/** Throws a Problem where the asker does not moderate. */
export function refuseMembers({ asker }: Context): void {
  if (asker.moderates) return
  throw new Problem({
    what: 'Only moderators change the standard answers of this club.',
    expected: 'a moderator to ask for it; anyone can look at them',
    example: 'answer list',
  })
}

/** Throws a Problem where the community has none of that title. */
export async function answerTitled(title: string, { memory, community }: Context): Promise<StandardAnswer> {
  const answer = await memory.answers.find(community.id, title)
  if (answer) return answer
  throw new Problem({
    what: `There is no standard answer "${title}" here.`,
    token: title,
    expected: 'the title of one that is saved',
    example: 'answer list',
  })
}

type Content = Pick<NewAnswer, 'kind' | 'content' | 'canonical'>

/**
 * What a standard answer is made of. Undefined where neither is given. Throws a Problem where both are, and
 * where the club cannot ask that question: a saved name must be in the club's kit.
 */
export async function contentOf(
  title: string,
  { question, text }: { readonly question?: string; readonly text?: string },
  { cards, community }: Context,
): Promise<Content | undefined> {
  if (question !== undefined && text !== undefined) {
    throw new Problem({
      what: 'A standard answer is either to a question or in your own words.',
      expected: 'question or text, not both',
      example: 'answer save title: Wren at the bench question: current pack: 3S 720 LiHV',
    })
  }
  if (text !== undefined) return { kind: 'text', content: text, canonical: '' }
  if (question === undefined) return undefined
  const saying = { title, kind: 'question', content: question } as const
  const reply = await cards.render(community.id, saying)
  if (reply.problem) throw new Problem(reply.problem)
  return { kind: 'question', content: question, canonical: reply.question ?? '' }
}

/** Where the card stands now, as the end of a sentence about the answer, and what hinders the rest. */
export function standingWords({ posted, pinned, missing: why }: Standing, locale: Locale): string {
  const missing = why?.(locale)
  if (!posted) return `but it stands nowhere yet. ${missing ?? ''}`.trim()
  return pinned ? 'and it is pinned here.' : `and it stands here, not pinned. ${missing ?? ''}`.trim()
}

export const linkLines = ({ link }: Standing): readonly string[] =>
  link === undefined ? [] : [`It is here: ${link}`]
