// Words in a plain question that say a pack is unsound: such a pack is never advised on, whatever else is asked.

import { shortened } from '../../ground/plain-text.ts'
import { Problem, type ProblemToSay } from '../../ground/problem.ts'

const burning =
  /\b(?:on fire|(?:in )?flames?|burning|smok(?:es?|ed|ing)|hiss(?:es|ing|ed)?|vent(?:s|ed|ing))\b/giu
const unsound =
  /\b(?:swollen|swell(?:ed|ing|s)?|puff(?:ed|y|ing|s)?|bloated|ballooned|bulg(?:ed|es|ing)|punctured?|pierced|dent(?:s|ed)?|smells?|crushed|torn|leak(?:s|y|ing|ed)?|burn(?:s|t|ed)|melt(?:s|ed|ing)|crash(?:ed)?|damaged|soaked|submerged|drowned|waterlogged|(?:is|was|got|gets|getting) wet|in(?:to)? (?:the |a )?(?:water|lake|pond|sea|river)|short(?:ed|-circuited)|overheat(?:s|ed|ing)?|overcharged|too hot|hot (?:pack|battery|lipo|cell|to the touch)|(?:is|feels|got|gets|getting|still|so|very) hot(?! (?:outside|here|today|out|day|weather)))\b/giu
const denial =
  /(?:\bnot|\bno|\bnever|n't|\bwithout)(?: (?:any|at all|a|the|bit|signs? of|is|been|being|yet|even))* $/iu

const leaveIt: Omit<ProblemToSay, 'token'> = {
  what: 'Leave a pack that burns, smokes or hisses alone: keep everybody away from its smoke and call the fire service.',
  expected: 'no charging question about it; do not touch, move or unplug it unless that is safe',
  example: 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A',
  verdict: 'do not charge',
}

const doNotCharge: Omit<ProblemToSay, 'token'> = {
  what: 'Do not charge a pack that is swollen, damaged, wet, leaking or hot.',
  expected:
    'a sound pack at the temperature of the room; put this one outside on a surface that does not burn, away from people, and ask someone who knows how to dispose of it',
  example: 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A',
  verdict: 'do not charge',
}

/** The first word that says a pack burns, is swollen, pierced, hot or the like; undefined where none does. */
export function unsoundWord(text: string): string | undefined {
  return firstOf(burning, text) ?? firstOf(unsound, text)
}

/** Throws a Problem where the text says that a pack burns, or is swollen, pierced, hot or the like. */
export function refuseUnsound(text: string): void {
  const token = unsoundWord(text)
  if (token === undefined) return
  const details = firstOf(burning, text) === undefined ? doNotCharge : leaveIt
  throw new Problem({ ...details, token: shortened(token) })
}

function firstOf(signs: RegExp, text: string): string | undefined {
  const denied = (index: number) => denial.test(text.slice(Math.max(0, index - 40), index))
  return [...text.matchAll(signs)].find(({ index }) => !denied(index))?.[0]
}
