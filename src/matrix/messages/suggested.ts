// What our latest answers suggest to ask next, for as long as the program runs.

import type { FollowUp } from '../../assistant/reply.ts'

/** So many answers at most: the oldest go first. */
const most = 1000

export function createSuggested() {
  const questions = new Map<string, readonly string[]>()
  return {
    keep(answer: string, followUps: readonly FollowUp[]): void {
      questions.set(
        answer,
        followUps.map(({ question }) => question),
      )
      for (const [oldest] of questions) {
        if (questions.size <= most) break
        questions.delete(oldest)
      }
    },
    questionsOf: (answer: string): readonly string[] => questions.get(answer) ?? [],
  }
}
