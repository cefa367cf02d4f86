// A standard answer that is there, and what one is made of.

import type { Context } from '../../src/assistant/context.ts'
import { titlesLike } from '../../src/assistant/naming/titles.ts'
import { Problem } from '../../src/ground/problem.ts'
import { writeQuestion } from '../../src/language/sentence/question.ts'
import type { AnswerKept } from '../../src/memory/memory.ts'
import type { NewAnswer, StandardAnswer } from '../../src/memory/standard-answer.ts'
import { notBoth, untitled } from './answer-problems.words.ts'

/**
 * Throws a Problem where the community has none of that title: it offers the same of those that are most like it.
 * `command` and `details` are what is asked of it.
 */
export async function answerTitled(
  title: string,
  { memory, community }: Context,
  command: string,
  details: Readonly<Record<string, string | undefined>> = {},
): Promise<StandardAnswer> {
  const answer = await memory.answers.find(community.id, title)
  if (answer) return answer
  const titles = (await memory.answers.list(community.id)).map(one => one.title)
  const near = titlesLike(title, titles).ranked.slice(0, mostNear)
  const told = Object.entries(details).filter((pair): pair is [string, string] => pair[1] !== undefined)
  const again = (title: string) => writeQuestion({ command, options: { title, ...Object.fromEntries(told) } })
  throw untitled(title).offering(near.map(one => ({ label: one, question: again(one) })))
}
const mostNear = 4

type Content = Pick<NewAnswer, 'kind' | 'content' | 'canonical'>

/**
 * What a standard answer is made of. Undefined where neither is given. Throws a Problem where both are, and
 * where the club cannot ask that question: a saved name must be in the club's kit.
 */
export async function contentOf(
  title: string,
  { question, text }: { question?: string | undefined; text?: string | undefined },
  { cards, community }: Context,
): Promise<Content | undefined> {
  if (question !== undefined && text !== undefined) throw notBoth
  if (text !== undefined) return { kind: 'text', content: text, canonical: '' }
  if (question === undefined) return undefined
  const saying = { title, kind: 'question', content: question } as const
  const reply = await cards.render(community.id, saying)
  if (reply.problem) throw new Problem(reply.problem)
  return { kind: 'question', content: question, canonical: reply.question ?? '' }
}

/** Without its card, which comes and goes. */
export const answerKept = ({ id, title, kind, content, canonical, place }: StandardAnswer): AnswerKept => ({
  id,
  title,
  kind,
  content,
  canonical,
  place,
})
