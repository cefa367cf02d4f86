// The buttons under an answer: its layers, and the "what if" questions it suggests.

import { type APIActionRowComponent, type APIButtonComponentWithCustomId, ButtonStyle, ComponentType } from 'discord.js'
import { labelsIn } from '../../assistant/labels.words.ts'
import { layersOf, titleOf } from '../../assistant/layers/opened.ts'
import type { FollowUp, Reply } from '../../assistant/reply.ts'
import { present } from '../../ground/present.ts'
import { type Behind, type Press, writeCustomId } from './custom-id.ts'

const perRow = 5
/** More would push the answer off a phone's screen. */
const mostFollowUps = 10
const longestLabel = 80
const longestChoice = 25

/** How a button stands for each question; one that is not here gets no button. */
export type Questions = ReadonlyMap<string, Behind>

/** The questions that the buttons of a reply stand for. */
export const questionsBehind = ({ question, followUps }: Reply): string[] =>
  present([question, ...followUps.slice(0, mostFollowUps).map(followUp => followUp.question)])

export type ButtonRow = APIActionRowComponent<APIButtonComponentWithCustomId>

export function buttonRows(reply: Reply, behind: Questions): ButtonRow[] {
  const used = new Set<string>()
  const button = (label: string, question: string | undefined, deed: Press['deed']) => {
    const asked = question === undefined ? undefined : behind.get(question)
    if (!asked) return []
    const custom_id = writeCustomId({ deed, question: asked })
    // Discord refuses a message that bears the same custom id twice.
    if (used.has(custom_id)) return []
    used.add(custom_id)
    const text = label.length > longestLabel ? `${label.slice(0, longestLabel - 1)}…` : label
    return [{ type: ComponentType.Button, style: ButtonStyle.Secondary, label: text, custom_id } as const]
  }
  const opens = layersOf(reply).flatMap(layer => button(titleOf(reply, layer), reply.question, layer))
  const further = reply.problem ? [] : button(labelsIn(reply.locale).askMore, reply.question, 'further')
  const asks = reply.followUps
    .slice(0, mostFollowUps)
    .flatMap((one, index) => button(nameOf(one, index, reply), one.question, 'brief'))
  return [[...opens, ...further], ...chunks(asks, perRow)]
    .filter(row => row.length > 0)
    .map(components => ({ type: ComponentType.ActionRow, components }))
}

/** A whole question stands in the text, with its number where there are several. */
function nameOf({ label }: FollowUp, index: number, { problem, followUps, locale }: Reply): string {
  if (!problem || label.length <= longestChoice) return label
  return followUps.length > 1 ? String(index + 1) : labelsIn(locale).askThat
}

function chunks<T>(items: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, at) => items.slice(at * size, (at + 1) * size))
}
