// The buttons under an answer: its working, and the "what if" questions it suggests.

import { type APIActionRowComponent, type APIButtonComponentWithCustomId, ButtonStyle, ComponentType } from 'discord.js'
import { labelsIn } from '../../assistant/labels.words.ts'
import type { Reply } from '../../assistant/reply.ts'
import { present } from '../../ground/present.ts'
import { type View, writeCustomId } from './custom-id.ts'

const perRow = 5
/** More would push the answer off a phone's screen. */
const mostFollowUps = 10
const longestLabel = 80

/** The id under which the memory keeps a question; a question without one gets no button. */
export type QuestionIds = ReadonlyMap<string, string>

/** The questions that the buttons of a reply stand for. */
export const questionsBehind = ({ question, followUps }: Reply): string[] =>
  present([question, ...followUps.slice(0, mostFollowUps).map(followUp => followUp.question)])

/** Where there is no verdict and no figure, as in help, the working is the answer: it is shown at once. */
export const isAllWorking = ({ verdict, figures }: Reply): boolean => verdict === undefined && figures.length === 0
export type ButtonRow = APIActionRowComponent<APIButtonComponentWithCustomId>

export function buttonRows(reply: Reply, view: View, ids: QuestionIds): ButtonRow[] {
  const used = new Set<string>()
  const button = (label: string, question: string | undefined, pressed: View) => {
    const questionId = question === undefined ? undefined : ids.get(question)
    if (questionId === undefined) return []
    const custom_id = writeCustomId({ view: pressed, questionId })
    // Discord refuses a message that bears the same custom id twice.
    if (used.has(custom_id)) return []
    used.add(custom_id)
    const text = label.length > longestLabel ? `${label.slice(0, longestLabel - 1)}…` : label
    return [{ type: ComponentType.Button, style: ButtonStyle.Secondary, label: text, custom_id } as const]
  }
  const { hideWorking, showWorking } = labelsIn(reply.locale)
  const other: View = view === 'working' ? 'brief' : 'working'
  const working =
    reply.working.length > 0 && !isAllWorking(reply)
      ? button(view === 'working' ? hideWorking : showWorking, reply.question, other)
      : []
  const whatIf = reply.followUps
    .slice(0, mostFollowUps)
    .flatMap(({ label, question }) => button(label, question, 'brief'))
  return [working, ...chunks(whatIf, perRow)]
    .filter(row => row.length > 0)
    .map(components => ({ type: ComponentType.ActionRow, components }))
}

function chunks<T>(items: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, at) => items.slice(at * size, (at + 1) * size))
}
