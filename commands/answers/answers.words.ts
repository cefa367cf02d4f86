// What is said of standard answers and their cards.

import type { Standing } from '../../src/assistant/cards.ts'
import type { OptionWords, WordsOf } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import type { StandardAnswer } from '../../src/memory/standard-answer.ts'
import { undoLine } from '../shared/undo.words.ts'
import type { answerEdit, answerList, answerMove, answerPost, answerRemove, answerSave, answerShow } from './answers.ts'

const titleWords = ({ say }: Locale, about: Text): OptionWords => ({ about, as: text => say`"${text}"` })

const questionWords = ({ say }: Locale): OptionWords => ({
  about: say`the question that it answers; takes all that follows, so it stands last`,
})

const textWords = ({ say }: Locale): OptionWords => ({
  about: say`or text in your own words; takes all that follows, so it stands last`,
})

/** Where the card stands now, as the end of a sentence about the answer, and what hindered the rest. */
function standingWords({ posted, pinned, missing }: Standing, locale: Locale): Text {
  const { say } = locale
  if (!posted) return joined([say`but it stands nowhere yet.`, missing?.(locale)])
  return joined([pinned ? say`and it is pinned here.` : say`and it stands here, not pinned.`, missing?.(locale)])
}

const linkWords = ({ link }: Standing, { say, own }: Locale): Text | undefined =>
  link === undefined ? undefined : say`It is here: ${own(link)}`

export const answerSaveWords: WordsOf<typeof answerSave> = locale => {
  const { say, own } = locale
  const quoted = (command: string) => own(`"${command}"`)
  return {
    summary: say`Saves a standard answer under a title and pins its card here; for moderators.`,
    tells: [own('save a standard answer titled Small packs: charge at the bench')],
    takes: {
      title: titleWords(locale, say`the title that it is pinned under`),
      question: questionWords(locale),
      text: textWords(locale),
    },
    answer: ({ standing }, { title }) => [
      say`The standard answer "${own(title)}" is saved, ${standingWords(standing, locale)}`,
    ],
    working: ({ standing }) => [
      linkWords(standing, locale),
      say`I edit the card when a rule of the club, its kit or my own rules change what it says.`,
      say`${quoted('answer edit')} changes it, ${quoted('answer move')} takes it to another channel, ${quoted('answer remove')} takes it away.`,
    ],
  }
}

export const answerEditWords: WordsOf<typeof answerEdit> = locale => {
  const { say, own } = locale
  return {
    summary: say`Changes a standard answer and its card; for moderators.`,
    tells: [own('edit the answer Small packs: never in the car')],
    takes: {
      title: titleWords(locale, say`the title it has`),
      'new-title': { about: say`the title it gets`, as: text => say`now "${text}"` },
      question: questionWords(locale),
      text: textWords(locale),
    },
    answer: ({ title, isThere, hasCard }, { title: asked }) => {
      if (!isThere) return [say`The standard answer "${own(asked)}" has just been removed, so nothing was changed.`]
      return hasCard
        ? [say`The standard answer "${own(title)}" is changed; its card follows.`]
        : [say`The standard answer "${own(title)}" is changed; it has no card now.`]
    },
    working: () => [undoLine(locale)],
  }
}

export const answerMoveWords: WordsOf<typeof answerMove> = locale => {
  const { say, own } = locale
  return {
    summary: say`Takes the card of a standard answer to this channel; for moderators.`,
    tells: [own('move the answer Small packs here')],
    takes: { title: titleWords(locale, say`its title`) },
    answer: ({ standing }, { title }) => {
      if (!standing) return [say`The card of "${own(title)}" is in this channel already.`]
      return standing.posted
        ? [say`The card of "${own(title)}" is moved, ${standingWords(standing, locale)}`]
        : [say`The card of "${own(title)}" is left where it was.`, standing.missing?.(locale)]
    },
    working: ({ standing }) => [standing && linkWords(standing, locale)],
  }
}

export const answerPostWords: WordsOf<typeof answerPost> = locale => {
  const { say, own } = locale
  return {
    summary: say`Posts the card of a standard answer again where it was deleted; for moderators.`,
    tells: [own('post the answer Small packs')],
    takes: { title: titleWords(locale, say`its title`) },
    answer: ({ standing }, { title }) => [
      standing.posted
        ? say`The card of "${own(title)}" stands in its channel.`
        : say`The card of "${own(title)}" stands nowhere now.`,
      standing.missing?.(locale),
    ],
    working: ({ standing }) => [
      linkWords(standing, locale),
      say`A card that people have unpinned stays unpinned: pin it by hand where you want it pinned again.`,
    ],
  }
}

export const answerRemoveWords: WordsOf<typeof answerRemove> = locale => {
  const { say, own } = locale
  return {
    summary: say`Removes a standard answer and its card; for moderators.`,
    tells: [own('remove the answer Small packs')],
    takes: { title: titleWords(locale, say`its title`) },
    answer: (_, { title }) => [say`Removed: "${own(title)}" is no standard answer any longer.`],
    working: ({ content }) => [content === undefined ? undefined : say`It was: ${own(content)}`, undoLine(locale)],
  }
}

export const answerListWords: WordsOf<typeof answerList> = locale => {
  const { say, own } = locale
  return {
    summary: say`Lists the standard answers of this club.`,
    asks: [own('which standard answers are there'), own('show all standard answers')],
    takes: {},
    answer: ({ answers }) => {
      const titles = answers.map(({ title }) => own(title))
      return answers.length > 0
        ? [say`Standard answers: ${joined(titles, '; ')}.`]
        : [
            say`This club has no standard answer yet. A moderator saves one like this: save a standard answer titled Small packs: charge at the bench`,
          ]
    },
    figures: { standardAnswers: say`standard answers` },
    working: ({ answers, here }) => answers.map(answer => line(answer, here, locale)),
  }
}

function line({ title, kind, content, place, card }: StandardAnswer, here: string, locale: Locale): Text {
  const { say, own } = locale
  const what = kind === 'question' ? own(content) : say`in the own words of the moderators`
  if (!card) return say`${own(title)}: ${what}; it has no card now.`
  const stands = place === here ? say`its card stands here` : say`its card stands in another channel`
  return say`${own(title)}: ${what}; ${joined([stands, card.link === undefined ? undefined : own(card.link)], ', ')}.`
}

export const answerShowWords: WordsOf<typeof answerShow> = locale => {
  const { say, own } = locale
  return {
    summary: say`Shows a standard answer of this club as it is now.`,
    tells: [own('show the answer Small packs')],
    takes: { title: titleWords(locale, say`its title`) },
    answer: ({ shown }) => [
      own(shown.headline),
      shown.problem ? say`A moderator can mend it with "${own('answer edit')}".` : undefined,
    ],
    working: ({ kind, shown }) => [
      kind === 'question' ? say`It is the answer to: ${own(shown.readAs)}.` : say`It is ${own(shown.readAs)}.`,
    ],
  }
}
