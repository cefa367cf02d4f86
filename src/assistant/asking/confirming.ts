// What changes something is asked about once more: what overwrites or removes where it was said in plain words, all of it
// where it was said long ago.

import type { Locale, Said } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import { changeMeant } from '../asking-back/ask-back.words.ts'
import type { Entry } from '../command.ts'
import type { Known } from './around.ts'

/** Nine of ten such messages that are likelier than this name the change by its own words. */
const surely = 0.8

/** What changes something and may not be what was meant, as a question. */
export function unsure(
  { changes, words }: Entry,
  { question, understanding }: Pick<Known, 'question' | 'understanding'>,
  readAs: Text,
  locale: Locale,
  isLate = false,
): Said | undefined {
  return changes && (isLate || (understanding?.likelihood ?? 1) < surely)
    ? changeMeant(question.command, words(locale).summary, readAs)
    : undefined
}
