// What a text takes back of the dangers that were told before it. By signs that hold of any sentence, not by sentences.

import { type Danger, dangers } from '../../charging/situation/dangers.ts'
import { Index, type Marked } from './engine/matcher.ts'
import { dangersIn } from './index.ts'
import { lexicon, ready, scope } from './reader.ts'
import { endings, signs } from './rules/afterwards.ts'

export interface Corrections {
  /** Dangers that the text denies, or tells to be otherwise now. */
  readonly otherwise: ReadonlySet<Danger>
  /** They were told of another pack. */
  readonly otherPack: boolean
  /** Somebody looked once more and found it sound. */
  readonly foundSound: boolean
  /** Somebody measured once more. */
  readonly measured: boolean
  /** What was told was a mistake. */
  readonly mistaken: boolean
  /** It is said to be well, or to have got better by itself: that corrects nothing. */
  readonly isWish: boolean
}

const bySign = indexOf(signs)
const byEnding = indexOf(endings)

/** Never throws. */
export function correctionsIn(text: string): Corrections {
  const marked = ready.mark(text)
  const told = new Set(dangersIn(text).told.map(({ danger }) => danger))
  const said = namesIn(bySign, marked)
  const denied = ready
    .evidenceIn(marked)
    .filter(({ tells, denied, excused }) => tells.length === 0 && (denied > 0 || excused))
  const passed = [...namesIn(byEnding, marked)]
  const otherwise = [...denied.map(({ danger }) => danger), ...passed].filter(danger => !told.has(danger))
  const isSound = said.has('sound') || otherwise.some(danger => dangers[danger].stays === 'lasts')
  const holds = isSound && !said.has('recovered') && told.size === 0
  return {
    otherwise: new Set(otherwise),
    otherPack: said.has('otherPack'),
    foundSound: holds && said.has('lookedAgain'),
    measured: holds && said.has('measuredAgain'),
    mistaken: holds && said.has('mistaken'),
    isWish: said.has('recovered') || (said.has('sound') && said.has('seems')),
  }
}

function indexOf<N extends string>(lists: Readonly<Partial<Record<N, string>>>): Index<N> {
  const index = new Index<N>()
  for (const [name, list] of Object.entries(lists) as [N, string][])
    for (const source of list.split(',')) index.add(lexicon.pattern(source.trim().replace(/\s+/g, ' ')), name)
  return index
}

/** What is denied is not said. */
const namesIn = <N extends string>(index: Index<N>, marked: Marked): ReadonlySet<N> =>
  new Set(index.find(marked).flatMap(found => (scope.isDenied(found, marked) ? [] : [found.what])))
