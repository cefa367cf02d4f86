// An answer as it stands, struck through, under a line that says why.

import type { APIEmbed } from 'discord.js'
import type { Text } from '../../ground/text.ts'
import { escapeText } from './text.ts'

/** Discord's limit: https://docs.discord.com/developers/resources/message#embed-object-embed-limits */
const longest = 4096

const struckLines = (text: string): string => text.replace(/^.+$/gm, '~~$&~~')

/** Its pictures go: they say nothing without it. */
export function struck(embeds: readonly APIEmbed[], why: Text): APIEmbed[] {
  const [{ color, description = '', fields = [] } = {}] = embeds
  const head = `**${escapeText(why)}**`
  const said = [head, struckLines(description)].join('\n').slice(0, longest)
  return [
    { color, description: said, fields: fields.map(one => ({ ...one, value: struckLines(one.value).slice(0, 1024) })) },
  ]
}
