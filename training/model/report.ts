// What is to be known of a model before it is trusted, as lines of text.

import { type Intent, intents } from '../../src/language/corpus/intents.ts'
import { sharesOf } from '../../src/language/model/model.ts'
import { fits, type Guessed, hitShare, rankedOf, surprise } from './judged.ts'

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`

export function report(guessed: readonly Guessed[], temperature: number): string {
  return [
    `first fits: ${percent(hitShare(guessed, 1))}, one of two: ${percent(hitShare(guessed, 2))}, of ${guessed.length}`,
    `surprise ${surprise(guessed, temperature).toFixed(3)} at a temperature of ${temperature}`,
    swallowed(guessed),
    `as sure as right: ${calibration(guessed, temperature)}`,
    'most often taken for another:',
    ...confusions(guessed).slice(0, 10),
  ].join('\n')
}

const idle: readonly Intent[] = ['smalltalk', 'notours']
const isIdle = (intent: number | undefined): boolean => intent !== undefined && idle.includes(intents[intent] as Intent)

/** Real questions taken for idle talk or none of ours, and the other way. */
function swallowed(guessed: readonly Guessed[]): string {
  const real = guessed.filter(({ example }) => !isIdle(example.intent))
  const others = guessed.filter(({ example }) => isIdle(example.intent))
  const lost = real.filter(guess => isIdle(rankedOf(guess)[0]) && !fits(guess.example, rankedOf(guess)[0]))
  const answered = others.filter(guess => !isIdle(rankedOf(guess)[0]))
  return (
    `real taken for idle: ${lost.length} of ${real.length} (${percent(lost.length / real.length)}), ` +
    `idle taken for real: ${answered.length} of ${others.length} (${percent(answered.length / others.length)})`
  )
}

function confusions(guessed: readonly Guessed[]): readonly string[] {
  const counts = new Map<string, number>()
  for (const guess of guessed) {
    const first = rankedOf(guess)[0]
    if (first === undefined || fits(guess.example, first)) continue
    const pair = `  ${intents[guess.example.intent]} for ${intents[first]}`
    counts.set(pair, (counts.get(pair) ?? 0) + 1)
  }
  return [...counts].sort((one, other) => other[1] - one[1]).map(([pair, count]) => `${pair}: ${count}`)
}

/** For shares in steps, how many of the guesses fit. */
function calibration(guessed: readonly Guessed[], temperature: number): string {
  const steps = [0.3, 0.5, 0.7, 0.9, 1.01]
  return steps
    .map((step, index) => {
      const from = steps[index - 1] ?? 0
      const within = guessed.filter(({ scores }) => {
        const share = Math.max(...sharesOf(scores, temperature))
        return share >= from && share < step
      })
      const right = within.filter(guess => fits(guess.example, rankedOf(guess)[0])).length
      return `${from} to ${Math.min(1, step)}: ${right} of ${within.length}`
    })
    .join('; ')
}
