// Which command is meant where values of a sentence are a sign of it: the likeliest that a sign fits takes what others had.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { Ranked } from '../model/index.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { signs } from './joined.ts'

/** What sounds like one command is another, where a sign says so. */
export const bySigns = (
  ranked: readonly Ranked[],
  text: string,
  values: readonly Candidate[],
  vocabulary: Vocabulary,
): readonly Ranked[] => {
  const sentence = { text, values, pack: values.find(({ pack }) => pack?.capacity_Ah !== undefined)?.pack }
  return signs.reduce((likely, { meant: isMeant, from, holds, isNoWords }) => {
    const meant = likeliestFirst(vocabulary, likely).find(isMeant)
    if (!meant || !holds(sentence, meant)) return likely
    const givers = new Set<string>(vocabulary.filter(one => one !== meant && from(one)).map(({ name }) => name))
    if (isNoWords) for (const intent of ['handbook', 'trouble', 'smalltalk', 'notours']) givers.add(intent)
    const sum = likely.reduce((all, { intent, share }) => (givers.has(intent) ? all + share : all), 0)
    return likely
      .map(one =>
        one.intent === meant.name
          ? { ...one, share: one.share + sum }
          : givers.has(one.intent)
            ? { ...one, share: 0 }
            : one,
      )
      .toSorted((a, b) => b.share - a.share)
  }, ranked)
}

function likeliestFirst(vocabulary: Vocabulary, likely: readonly Ranked[]): Vocabulary {
  const shares = new Map(likely.map(({ intent, share }) => [intent as string, share]))
  return vocabulary.toSorted((a, b) => (shares.get(b.name) ?? 0) - (shares.get(a.name) ?? 0))
}
