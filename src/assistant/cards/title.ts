// Titles of standard answers.

import { plainText, problemAt, unquoted } from '../../ground/plain-text.ts'
import { wordsKind } from '../../language/kinds/value-kind.ts'
import type { AnswerMemory } from '../../memory/standard-answer.ts'
import type { Occasion } from '../occasion.ts'
import { noTitle, titleWanted } from './cards.words.ts'

const longestTitle = 80

/** Of an answer that is saved: completed from those. */
export const titleKind = wordsKind({ name: 'title', example: 'Wren at the bench', read: readTitle })

export const newTitleKind = { ...titleKind, name: 'new title' }

/** A colon would part the title in two where its question is written out. */
function readTitle(text: string): string {
  const title = unquoted(plainText(text))
  if (title.length <= longestTitle && !title.includes(':') && /[\p{L}\p{N}]/u.test(title)) return title
  throw problemAt(text, noTitle, { expected: titleWanted(longestTitle), example: `title: ${titleKind.example}` })
}

export async function titlesStartingWith(
  prefix: string,
  answers: AnswerMemory,
  { community }: Occasion,
): Promise<readonly string[]> {
  const typed = prefix.trim().toLowerCase()
  const all = await answers.list(community.id)
  return all.map(({ title }) => title).filter(title => title.toLowerCase().startsWith(typed))
}
