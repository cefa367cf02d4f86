// The lesson that a sentence names, by words of its title or by its number in the list.

import { english } from '../../ground/locale.ts'
import { lessons } from '../../handbook/lessons/index.ts'
import { commonplace, contentOf, familiesOfStem, stemsOf } from '../../handbook/search/words.ts'
import type { Candidate } from '../../language/candidates/index.ts'

/** What its words are about: families of words, or a word that is in none. */
const aboutOf = (text: string): ReadonlySet<string> =>
  new Set(
    contentOf(stemsOf(text))
      .flatMap(one => {
        const families = familiesOfStem(one)
        return families.length > 0 ? families : [one]
      })
      .filter(one => !commonplace.has(one)),
  )

const titles = lessons.map(({ key, title }) => ({ key, about: aboutOf(`${key} ${title(english('.'))}`) }))

const isNumber = ({ kind }: Candidate): boolean => kind === 'number' || kind === 'count'

/** Also one that is no count of anything: there is none of that number. */
const numbered = /\blesson (?:no\.? |number )?(\d+)\b/iu

/** Its key or its number; undefined where the sentence leaves it open. */
export function lessonTold(plain: string, values: readonly Candidate[]): string | undefined {
  const told = aboutOf(plain)
  const [best] = titles
    .map(({ key, about }) => ({ key, shared: about.intersection(told).size }))
    .filter(({ shared }) => shared > 0)
    .toSorted((a, b) => b.shared - a.shared)
  return best?.key ?? values.find(isNumber)?.text ?? numbered.exec(plain)?.[1]
}
