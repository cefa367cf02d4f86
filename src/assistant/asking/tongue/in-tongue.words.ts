// What is said in English beside an answer to a question in a language that is not read.

import type { Locale } from '../../../ground/locale.ts'
import type { Text } from '../../../ground/text.ts'
import type { TongueText } from '../../../handbook/tongues.ts'

/** A question in English about the pack that was told, as it was typed; or about any. */
export const exampleOf = (pack: string | undefined, { say, own }: Locale): Text =>
  say`what current for ${own(pack ?? '3S 1300mAh LiPo')}?`

/** `behind` is what was read, or an example. */
export function inEnglish(text: TongueText, behind: Text | undefined, { say, own }: Locale): Text {
  if (text === 'partly') return say`I need English to be sure, and read only a part of this: ${behind ?? own('')}.`
  if (text === 'english')
    return say`I read English, and some German, French, Spanish, Dutch and Italian. Ask in English: ${behind ?? own('')}`
  return say`I need English to be sure what else you asked.`
}
