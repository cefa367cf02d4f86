// A machine that takes our answers for questions is not answered for ever; people who ask again are.

import { describe, expect, it } from 'vitest'
import { createGoingRound } from '../../../src/matrix/rooms/going-round.ts'

/** Says the words of each round after an answer of ours; how many of them were answered. */
function answeredOf(words: readonly string[], every_ms = 1000): number {
  let now_ms = 0
  const goingRound = createGoingRound(() => now_ms)
  return words.filter(said => {
    now_ms += every_ms
    const isSilent = goingRound.again('!field', '@feed', said, now_ms)
    if (!isSilent) goingRound.answered('!field', '@feed', 'GO')
    return !isSilent
  }).length
}
const often = (words: string) => Array.from({ length: 50 }, () => words)

describe('an exchange that goes round', () => {
  it('ends after a few times', () => expect(answeredOf(often('I do not know that'))).toBe(11))

  it('ends where two exchanges alternate', () => {
    expect(answeredOf(Array.from({ length: 50 }, (_, at) => ['what?', 'pardon?'][at % 2] ?? ''))).toBeLessThan(23)
  })

  it('is none where other things are said, nor where it comes now and then', () => {
    expect(answeredOf(Array.from({ length: 50 }, (_, at) => `time pack: 3S ${400 + at}`))).toBe(50)
    expect(answeredOf(often('help'), 200_000)).toBe(50)
  })

  it('is none where all was said before an answer stood', () => {
    const goingRound = createGoingRound(() => 1000)
    for (const _ of often('')) {
      expect(goingRound.again('!field', '@ada', 'help', 999)).toBe(false)
      goingRound.answered('!field', '@ada', 'GO')
    }
  })

  it('is none of another person or room', () => {
    const goingRound = createGoingRound(() => 1000)
    const say = (room: string, person: string) => {
      const isSilent = goingRound.again(room, person, 'help', 1000)
      goingRound.answered(room, person, 'GO')
      return isSilent
    }
    for (const _ of often('')) say('!field', '@feed')
    expect([say('!field', '@feed'), say('!field', '@ada'), say('!bench', '@feed')]).toEqual([true, false, false])
  })
})
