// What stands in the channels of the fake Discord, as people read it.

import type { FakeDiscord } from './fake-discord.ts'

/** The first line of each message, without its verdict, numbers with plain spaces. */
export const answersIn = ({ messages }: Pick<FakeDiscord, 'messages'>): string[] =>
  messages.map(({ body }) => firstLine(body))

export const firstLine = (body: { embeds: { description?: string }[] }): string =>
  (body.embeds[0]?.description ?? '')
    .split('\n')[0]
    ?.replace(/\*\*([A-Z]{2,} \S+ )?/g, '')
    .replaceAll('\u00a0', ' ') ?? ''

interface Row {
  readonly components: readonly { readonly label: string; readonly custom_id: string }[]
}

/** The custom id of the button with that label. */
export function buttonOf(body: { components: readonly Row[] }, label: string): string {
  const found = body.components.flatMap(({ components }) => components).find(one => one.label === label)
  if (!found) throw new Error(`there is no button "${label}"`)
  return found.custom_id
}
