// Words in a plain question that say a pack is unsound: such a pack is never advised on, whatever else is asked.

import { Problem } from '../assistant/problem.ts'
import { shortened } from './text.ts'

const unsound =
  /\b(?:swollen|swell(?:ed|ing|s)?|puff(?:ed|y|ing|s)?|bloated|ballooned|bulg(?:ed|es|ing)|punctured?|pierced|dented|crushed|torn|leak(?:s|y|ing|ed)?|smok(?:es?|ed|ing)|hiss(?:es|ing|ed)?|burn(?:s|t|ed|ing)|on fire|crash(?:ed)?|damaged|short(?:ed|ed out|-circuited)|overheat(?:s|ed|ing)?|too hot|hot (?:pack|battery|lipo|cell|to the touch)|(?:is|feels|got|gets|getting|still|so|very) hot(?! (?:outside|here|today|out|day|weather)))\b/giu
const denial =
  /(?:\bnot|\bno|\bnever|n't|\bwithout)(?: (?:any|at all|a|the|bit|signs? of|is|been|being|yet|even))* $/iu

/** The first word that says a pack is swollen, pierced, hot or the like; undefined where none does. */
export function unsoundWord(text: string): string | undefined {
  return [...text.matchAll(unsound)].find(
    ({ index }) => !denial.test(text.slice(Math.max(0, index - 40), index)),
  )?.[0]
}

/** Throws a Problem where the text says that a pack is swollen, pierced, hot or the like. */
export function refuseUnsound(text: string): void {
  const found = unsoundWord(text)
  if (found === undefined) return
  throw new Problem({
    what: 'Do not charge a pack that is swollen, damaged, leaking or hot.',
    token: shortened(found),
    expected:
      'a sound pack at the temperature of the room; put this one outside on a surface that does not burn, away from people, and ask someone who knows how to dispose of it',
    example: 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A',
  })
}
