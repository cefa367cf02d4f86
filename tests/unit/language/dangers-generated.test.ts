// Told dangers in ordinary frames: none comes back with neither a danger told nor one suspected.

import { describe, expect, test } from 'vitest'
import type { Danger } from '../../../src/charging/situation/dangers.ts'
import { dangersIn } from '../../../src/language/dangers/index.ts'
import { ordinaryWords } from '../../../src/language/dangers/lexicon/ordinary.ts'
import { lexicon } from '../../../src/language/dangers/reader.ts'
import { someOf } from '../../support/cases.ts'
import { dangerWordings } from './danger-wordings.ts'

const realWords = new Set([...ordinaryWords, ...lexicon.listed(), 'boated'])
const sentences = someOf(20_000)

/** A danger before, amid and behind ordinary words; "@" is where it stands. */
const frames = [
  '@',
  '@. What amps do I set?',
  '@, how long will it take?',
  '@ and what do I set then',
  'what amps please, @',
  'How many minutes do you reckon? @',
  'hi all, @, which current is right?',
  'quick one before tea: @, how many minutes then',
  'ok so @ but when will it be done',
  'storage charge please (@) how long',
  'morning, the sun is out and @ so what do i dial in',
  'need it for sunday, @',
]
const packFrames = [
  '3s 1300 lipo, @, what amps',
  'what do i set for the 4s 2200, @',
  '@, how long for the 3S 2200 LiPo at 2 A?',
  'my 6s 5000, @, is 1C fine',
  'For the 2S 450 LiPo @ how many mA is right',
]
/** Dangers that lie in what the values say to each other: another pack in the sentence would change them. */
const ofValues: readonly Danger[] = [
  'wrongCount',
  'wrongMode',
  'boardMixed',
  'tooFast',
  'tooLow',
  'overfull',
  'storedFull',
]

describe('dangers in ordinary frames', () => {
  test('each danger has a dozen wordings and more', () => {
    for (const [danger, wordings] of dangerWordings) {
      expect.soft(new Set(wordings).size, danger).toBeGreaterThanOrEqual(12)
    }
  })

  test(`none of ${sentences} sentences passes for an ordinary one`, () => {
    const next = randomNumbers(20_261_129)
    const all = [...dangerWordings].flatMap(([danger, wordings]) => wordings.map(wording => ({ danger, wording })))
    const passed: string[] = []
    for (let n = 0; n < sentences; n += 1) {
      const { danger, wording } = all[n % all.length] ?? { danger: 'fire', wording: '' }
      const sentence = framed(danger, wording, next)
      const { told, suspected } = dangersIn(sentence)
      if (told.length === 0 && suspected.length === 0) passed.push(`${danger}: ${sentence}`)
    }
    expect(passed).toEqual([])
  })
})

function framed(danger: Danger, wording: string, next: () => number): string {
  const fitting = ofValues.includes(danger) ? frames : [...frames, ...packFrames]
  const frame = fitting[Math.floor(next() * fitting.length)] ?? '@'
  const typed = next() < 0.3 ? withSlip(wording, next) : wording
  let sentence = frame.replace('@', () => typed)
  if (next() < 0.25) sentence = sentence.replaceAll(',', '')
  if (next() < 0.5) sentence = sentence.toLowerCase()
  return next() < 0.3 ? sentence.replaceAll("'", '') : sentence
}

/** One slip of the finger in one word of seven letters or more, behind its first letter, that makes no other word. */
function withSlip(wording: string, next: () => number): string {
  const long = wording.split(' ').filter(word => /^[a-z]{7,}$/i.test(word))
  const word = long[Math.floor(next() * long.length)]
  if (word === undefined) return wording
  const at = 1 + Math.floor(next() * (word.length - 2))
  const slips = [
    word.slice(0, at) + word.slice(at + 1),
    word.slice(0, at) + word.slice(at, at + 1) + word.slice(at),
    word.slice(0, at) + word.slice(at + 1, at + 2) + word.slice(at, at + 1) + word.slice(at + 2),
  ]
  const slip = slips[Math.floor(next() * slips.length)] ?? word
  return realWords.has(slip.toLowerCase()) ? wording : wording.replace(word, () => slip)
}

/** The same numbers in every run, 0 up to 1. */
function randomNumbers(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 4_294_967_296
  }
}
