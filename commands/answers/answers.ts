// Standard answers of a club: saved, shown, changed, moved and removed, each with its card.

import { randomUUID } from 'node:crypto'
import { newTitleKind, titleKind } from '../../src/assistant/cards/title.ts'
import { changing } from '../../src/assistant/changing.ts'
import { optional, required, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { questionKind, textKind } from '../../src/language/kinds/text-kinds.ts'
import * as problems from './answer-problems.words.ts'
import { answerKept, answerTitled, contentOf } from './stored-answer.ts'

/** More pinned messages than a club reads. */
export const mostAnswers = 100

/** Saves a standard answer of the club, posts its card where it is asked, and pins it. */
export const answerSave = service({
  name: 'answer save',
  takes: { title: required(newTitleKind), question: optional(questionKind), text: optional(textKind) },
  examples: [
    'answer save title: Small packs at the bench question: current pack: 3S 720 LiHV charger: 0.3/0.8/1.5/3A',
    'answer save title: Where we charge text: At the bench by the door. Nobody charges in a car.',
  ],
  changes: true,
  apart: true,
  moderators: problems.onlyModeratorsChange,
  run: async ({ title, ...told }, context) => {
    const content = await contentOf(title, told, context)
    if (!content) throw problems.nothingToSave
    const { community, place, cards, asked } = context
    const id = asked?.id ?? randomUUID()
    await changing(context, async ({ answers }) => {
      const answer = { id, community: community.id, place: place.id, title, ...content }
      const added = await answers.add(answer, mostAnswers)
      if (added === 'full') throw problems.noMoreFit(mostAnswers)
      // This very question saved it, and was broken off before its card stood.
      if (added === 'taken' && (await answers.get(id))) return { result: undefined, change: undefined }
      if (added === 'taken') throw problems.savedAlready(title)
      return { result: undefined, change: { of: 'answer', after: answerKept(added) } }
    })
    return { standing: await cards.post(id, place.id) }
  },
})

/** Changes a standard answer; its card changes where it stands. */
export const answerEdit = service({
  name: 'answer edit',
  takes: {
    title: required(titleKind),
    'new-title': optional(newTitleKind),
    question: optional(questionKind),
    text: optional(textKind),
  },
  examples: ['answer edit title: Where we charge text: At the bench by the door, and in the steel box.'],
  changes: true,
  moderators: problems.onlyModeratorsChange,
  confirm: async ({ title, 'new-title': newTitle, question, text }, context) => {
    const answer = await answerTitled(title, context, 'answer edit', { 'new-title': newTitle, question, text })
    const content = question ?? text
    if (content === undefined && newTitle === undefined) throw problems.nothingToChange
    return problems.changesAnswer(answer, newTitle, content)
  },
  run: async ({ title: asked, 'new-title': newTitle, ...told }, context) => {
    const answer = await answerTitled(asked, context, 'answer edit', { 'new-title': newTitle, ...told })
    const title = newTitle ?? answer.title
    const content = await contentOf(title, told, context)
    if (!content && newTitle === undefined) throw problems.nothingToChange
    const outcome = await changing(context, async ({ answers }) => {
      const result = await answers.change(answer.id, { ...content, title: newTitle })
      if (result === 'taken') throw problems.titleTaken(title)
      const before = answerKept(answer)
      return {
        result,
        change: result === 'changed' ? { of: 'answer', before, after: { ...before, ...content, title } } : undefined,
      }
    })
    return { title, isThere: outcome === 'changed', hasCard: answer.card !== undefined }
  },
})

/** Takes the card of a standard answer to the channel in which this is asked. */
export const answerMove = service({
  name: 'answer move',
  takes: { title: required(titleKind) },
  examples: ['answer move title: Where we charge'],
  changes: true,
  apart: true,
  moderators: problems.onlyModeratorsChange,
  /** Where the card stands now; undefined where it stood here already. */
  run: async ({ title }, context) => {
    const answer = await answerTitled(title, context, 'answer move')
    const { id, place, card } = answer
    const here = context.place.id
    if (card && place === here) return { standing: undefined }
    const standing = await context.cards.post(id, here)
    const before = answerKept(answer)
    const change = { of: 'answer', before, after: { ...before, place: here } } as const
    if (standing.posted) await changing(context, async () => ({ result: undefined, change }))
    return { standing }
  },
})

/** Puts the card of a standard answer back where it belongs, after somebody deleted it or it could not be pinned. */
export const answerPost = service({
  name: 'answer post',
  takes: { title: required(titleKind) },
  examples: ['answer post title: Where we charge'],
  changes: true,
  apart: true,
  moderators: problems.onlyModeratorsChange,
  run: async ({ title }, context) => {
    const { id } = await answerTitled(title, context, 'answer post')
    return { standing: await context.cards.restore(id) }
  },
})

/** Removes a standard answer and takes its card away. */
export const answerRemove = service({
  name: 'answer remove',
  takes: { title: required(titleKind) },
  examples: ['answer remove title: Where we charge'],
  changes: true,
  moderators: problems.onlyModeratorsChange,
  confirm: async ({ title }, context) => {
    return problems.removesAnswer(await answerTitled(title, context, 'answer remove'))
  },
  /** What it was; undefined where somebody else has just removed it. */
  run: async ({ title }, context) => {
    const { id } = await answerTitled(title, context, 'answer remove')
    const removed = await changing(context, async ({ answers }) => {
      const gone = await answers.remove(id)
      return { result: gone, change: gone && { of: 'answer', before: answerKept(gone) } }
    })
    if (removed) await context.afterwards(({ cards }) => cards.takeAway(removed))
    return { content: removed?.content }
  },
})

/** Lists the standard answers of the club, and where their cards stand. */
export const answerList = service({
  name: 'answer list',
  takes: {},
  examples: ['answer list'],
  notStanding: true,
  run: async (_, { memory, community, place }) => ({
    answers: await memory.answers.list(community.id),
    here: place.id,
  }),
  figures: ({ answers }) => [figure.count('standardAnswers', answers.length)],
})

/** Shows a standard answer to whoever asks, as its card would be now. */
export const answerShow = service({
  name: 'answer show',
  takes: { title: required(titleKind) },
  examples: ['answer show title: Where we charge'],
  notStanding: true,
  run: async ({ title }, context) => {
    const answer = await answerTitled(title, context, 'answer show')
    return { kind: answer.kind, shown: await context.cards.render(context.community.id, answer) }
  },
  handsOn: ({ shown }) => shown,
})
