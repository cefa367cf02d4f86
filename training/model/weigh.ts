// Prints what each sign for or against a choice is worth, by a logistic choice among the candidates of each message of
// people whom the model of intents never saw, drawn to what is set now.

import { commands } from '../../commands/index.ts'
import { createRegistry } from '../../src/assistant/registry.ts'
import { askedOf } from '../../src/handbook/asked.ts'
import { bestCover, candidatesOf } from '../../src/language/candidates/index.ts'
import { intents } from '../../src/language/corpus/intents.ts'
import { sharesOf } from '../../src/language/model/model.ts'
import { choices } from '../../src/language/reading/choose.ts'
import { readings } from '../../src/language/reading/readings.ts'
import { worth } from '../../src/language/reading/weighing.ts'
import { allExamples, type Example } from './examples.ts'

/** What is set now weighs as much as so many messages. */
const drawn = 4
const [rounds, pace] = [60, 0.3]

type Sign = keyof typeof worth
const signs = Object.keys(worth) as readonly Sign[]
const { vocabulary } = createRegistry(commands)

interface Candidates {
  /** For each candidate, how often each sign holds. */
  readonly times: readonly (readonly number[])[]
  readonly isRight: readonly boolean[]
}

/** Something that is wrong right now is looked up in the handbook as well. */
const sameAs = (intent: string | undefined) => (intent === 'trouble' ? 'handbook' : intent)

function candidatesIn({ text, intent, also }: Example): Candidates {
  const values = bestCover(candidatesOf(text))
  const { ranked, readBy } = readings(text, values, { typed: text, of: () => ({}) }, vocabulary)
  const found = choices({
    text,
    values,
    ranked,
    vocabulary,
    readBy,
    lentTo: () => ({ kept: {} }),
    inHandbook: askedOf(text).sureness,
  })
  const right = [intent, also].map(place => place !== undefined && sameAs(intents[place]))
  return {
    times: found.map(choice => signs.map(sign => choice.signs[sign] ?? 0)),
    isRight: found.map(choice => right.includes(sameAs(choice.intent) ?? false)),
  }
}

const amends = intents.indexOf('amend')
const asked = allExamples()
  .filter(({ isHeldOut, intent }) => isHeldOut && intent !== amends)
  .map(candidatesIn)
  .filter(({ isRight }) => isRight.includes(true))
const prior = signs.map(sign => worth[sign])
const weights = [...prior]
for (let round = 0; round < rounds; round += 1) {
  const slopes = weights.map((weight, at) => drawn * (weight - (prior[at] ?? 0)))
  const bends = weights.map(() => drawn)
  for (const { times, isRight } of asked) {
    const scores = times.map(one => one.reduce((sum, many, at) => sum + many * (weights[at] ?? 0), 0))
    const given = sharesOf(Float64Array.from(scores), 1)
    const wanted = sharesOf(
      Float64Array.from(scores, (score, n) => (isRight[n] ? score : Number.NEGATIVE_INFINITY)),
      1,
    )
    for (const at of signs.keys()) {
      const mean = (shares: Float64Array, power = 1) =>
        shares.reduce((sum, share, n) => sum + share * (times[n]?.[at] ?? 0) ** power, 0)
      slopes[at] = (slopes[at] ?? 0) + mean(given) - mean(wanted)
      bends[at] = (bends[at] ?? 0) + mean(given, 2) - mean(given) ** 2
    }
  }
  for (const at of signs.keys()) weights[at] = (weights[at] ?? 0) - (pace * (slopes[at] ?? 0)) / (bends[at] ?? 1)
}
for (const [at, sign] of signs.entries()) console.log(sign.padEnd(16), worth[sign], 'to', weights[at]?.toFixed(2))
