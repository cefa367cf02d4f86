// A question that is nearly the title of a standard answer: that is what answers it.

import { commonplace, contentOf, familiesOfStem, stemsOf } from '../../handbook/search/words.ts'

/** What people put around a question. */
const around =
  /\b(?:h[ei]y?|hello|folks|guys|any ?(?:one|body)|every ?(?:one|body)|all|knows?|tell|remind|remember|again|wonder(?:ing)?|says?|sorry|thanks?|quick|question|ask(?:ing)?|find|find out|kept|today|idea)\b/giu
const contentIn = (text: string) => new Set(contentOf(stemsOf(text.replace(around, ''))))
const form = /\b(?:where|who|whose|when|which|why|how (?:much|many|long|often)|how)\b/giu
const asks = /\?|\bwhat\b/iu
const formsIn = (text: string): ReadonlySet<string> => new Set(text.toLowerCase().match(form))

/** All that both are about is the same, and they ask in the same form where both do. */
export function titleAsked(plain: string, titles: readonly string[]): string | undefined {
  const said = contentIn(plain)
  const forms = formsIn(plain)
  return titles.find(title => {
    const about = contentIn(title)
    const ofTitle = formsIn(title)
    const isAlike = about.size > 0 && about.symmetricDifference(said).size === 0
    const isPlain = [...about].some(one => !familiesOfStem(one).some(family => commonplace.has(family)))
    const isSameForm = ofTitle.isSubsetOf(forms) || forms.size === 0
    return (
      isAlike &&
      isSameForm &&
      (isPlain ? forms.size > 0 || ofTitle.size > 0 || asks.test(plain) : ofTitle.size > 0 && forms.size > 0)
    )
  })
}
