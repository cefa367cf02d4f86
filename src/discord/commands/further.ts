// Going on from an answer where Discord does not let us read what people reply: a button asks for the words.

import {
  type APIModalInteractionResponse,
  type APIModalSubmitInteraction,
  ComponentType,
  InteractionResponseType,
  TextInputStyle,
} from 'discord.js'
import type { Locale } from '../../ground/locale.ts'
import { furtherWords } from './further.words.ts'

const wordsField = 'words'
/** What the longest message of most people holds. */
const longestWords = 2000

/** It comes back under the same custom id. */
export function askFurther(custom_id: string, locale: Locale): APIModalInteractionResponse {
  const { title, label, example } = furtherWords(locale)
  return {
    type: InteractionResponseType.Modal,
    data: {
      custom_id,
      title,
      components: [
        {
          type: ComponentType.Label,
          label,
          component: {
            type: ComponentType.TextInput,
            custom_id: wordsField,
            style: TextInputStyle.Short,
            placeholder: example,
            max_length: longestWords,
          },
        },
      ],
    },
  }
}

/** Empty where none came. */
export function wordsIn({ data }: APIModalSubmitInteraction): string {
  const fields = data.components.flatMap(one => ('component' in one ? [one.component] : []))
  const field = fields.find(one => one.type === ComponentType.TextInput && one.custom_id === wordsField)
  return field && 'value' in field && typeof field.value === 'string' ? field.value.trim() : ''
}
