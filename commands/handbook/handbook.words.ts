// An entry of the handbook, the answer first. The entries are data and speak for themselves, so they go through `own`.

import type { WordsOf } from '../../src/assistant/command.ts'
import { present } from '../../src/ground/present.ts'
import type { Text } from '../../src/ground/text.ts'
import { type AskedOfHandbook, isNothing } from '../../src/handbook/asked.ts'
import type { HandbookEntry } from '../../src/handbook/entry.ts'
import { followUp } from '../shared/next.ts'
import type { handbook } from './handbook.ts'

export const handbookWords: WordsOf<typeof handbook> = locale => {
  const { say, own } = locale
  const titled = ({ title }: HandbookEntry) => followUp(own(title), 'handbook', { about: title })

  function answer({ entry, rival, nearest, dangers }: AskedOfHandbook): readonly Text[] {
    if (!entry) {
      const [first, second] = nearest.map(one => say`"${own(one.title)}": ${own(one.answer[0] ?? '')}`)
      if (!first)
        return [say`The handbook has nothing on that, or not in these words. Say it another way, or ask a club mate.`]
      return second
        ? [say`Which of these do you mean? ${first}`, second]
        : [say`The nearest that the handbook has is ${first}`]
    }
    // What the envelope says of its dangers stands before it and has answered already.
    const answer = dangers.length > 0 ? entry.answer.slice(1) : entry.answer
    const other = rival && say`Or do you mean "${own(rival.title)}"?`
    return present([own(answer.join(' ')), own(entry.do), other])
  }

  return {
    summary: say`What, why and may I: short answers from the club's handbook.`,
    asks: [own('why is the last bit so slow'), own('when is a pack too old')],
    takes: {
      about: {
        about: say`your question, in your own words`,
        as: value => (isNothing(value) ? say`nothing in just these words` : say`"${value}"`),
      },
      temperature: { about: say`of the cells`, as: text => say`cells at ${text}` },
    },
    answer,
    working: ({ entry }) => (entry ? [own(entry.why), say`From: ${own(entry.source)}.`] : []),
    whyNot: ({ about: { entry } }, found) =>
      entry?.dangers?.some(danger => found.some(({ key }) => key === danger)) ? [own(entry.why), own(entry.do)] : [],
    next: ({ entry, rival, nearest }) =>
      entry
        ? [
            rival && titled(rival),
            entry.command === undefined ? undefined : { label: say`Try it here`, question: entry.command },
            ...nearest
              .filter(one => one !== rival)
              .slice(0, 2)
              .map(titled),
          ]
        : nearest.map(titled),
    plainWords: ['look up', 'in the handbook', 'what does the handbook say'],
  }
}
