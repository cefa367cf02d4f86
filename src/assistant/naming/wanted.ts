// What a sentence wants of a standard answer, told by its structure: what the one on something is to say or to be called,
// where it is to stand, or that nobody needs it any more.

import { stemsOf } from '../../handbook/search/words.ts'
import { type SpokenOf, spokenOf, titleCalled } from './spoken-of.ts'
import { titleAt } from './title-at.ts'
import { aboutOf } from './titles.ts'
import { toldWhole } from './told-whole.ts'
import { type Deed, deedsIn } from './verbs.ts'

export interface Wanted {
  readonly deed: Deed | 'save'
  /** As it is stored, or as it was called where none is. */
  readonly title: string
  readonly newTitle?: string | undefined
  readonly text?: string | undefined
}

/** What stands before what is spoken of, and what stands behind it, with what is told there. */
type Place = readonly [head: RegExp, tail: RegExp]
const any = /^/u
const joining =
  /(?:(?:should|could|shall|must|may|might|can|would|is|are|was|were|be|to|had|has|needs?|ought|better|rather|henceforth|from|now|on|today|please|pls|just|then|also|instead|it|so|that|let|be) )/u
const says = new RegExp(
  String.raw`^(?: (?:answer|text|card|wording))?\W*${joining.source}+(?:says?|reads?|states?|tells? (?:people|them|every(?:one|body)|us|members|all))(?: that)?\b[ :,]*(.+)$`,
  'iu',
)
const colon =
  /^(?: (?:pls|please|new|text|is|be|now|to|should|shall|must|will|changed|amended|reworded|updated|read|say))*(?:[,.]? (?:new )?text)?: ?(?:now )?(.+)$/iu

/** Where its new words stand. */
const texts: readonly Place[] = [
  [any, says],
  [
    /\b(?:let|letting|make|making|have|having|could|can|should|shall|must|may)\W*$/iu,
    /^ (?:say|read)(?: that)?\b[ :,]*(.+)$/iu,
  ],
  [
    /\b(?:re(?:word|write|phrase|place)|edit|update|amend|correct|change)\b/iu,
    /^(?:[,:;.-]+| (?:with|by)\b:?| so(?: that)? it (?:says|reads):?)\W*(.+)$/iu,
  ],
  [
    any,
    /^(?: (?:answer|card|text|is|was|now))* (?:wrong|old|outdated|out of date|not right|no longer right)[,.:;-]+ ?((?:it(?:'?s)?|they|now|new|should|say|write|put)\b.+)$/iu,
  ],
]

/** Where its new title stands. */
const titlesToBe: readonly Place[] = [
  [
    any,
    new RegExp(
      String.raw`^\W*${joining.source}*(?:(?:re)?(?:named|titled|called)|known as|headed|go by|(?:nicer|better|clearer|easier) as)(?: to| as)? (.+)$`,
      'iu',
    ),
  ],
  [/\b(?:rename|retitle|relabel)\W*$/iu, /^ (?:to|into|as) (.+)$/iu],
  [/\b(?:title|name|heading) (?:of|for)\W*$/iu, colon],
  [any, /^ ?(?:->|=>) ?(.+)$/u],
  [any, /^ (?:title|name|heading) (?:to|into|as|is|should be) (.+)$/iu],
  [/\b(?:call|name|title|rename|retitle)\W*$/iu, /^(.+)$/u],
]

/** Behind a question or what stands in quotes no sign is needed. */
const isQuoted = /^["'].*["']$|^(?:wh\w+|how) /iu
const plainly = /^(?: (?:is|be|to be|shall be|should be|will be|reads)(?: that)?|\W* (?:it|that)(?:'?s| is)) (.+)$/iu
const looks = /\bwhat(?:'?s| is| stands)(?: written)? (?:in|on|under)\W*$/iu
const here = /\b(?:here|in (?:this|the|our) (?:room|channel|chat|group))\b/iu
const puts: ReadonlySet<Deed | undefined> = new Set([undefined, 'move', 'post', 'keep'] as const)
const others: ReadonlySet<Deed | undefined> = new Set(['remove', 'restore', 'move', 'show'] as const)
/** Nobody has a use for it. */
const isIdle =
  /\b(?:(?:no longer|not|nobody|no one|none of us|\w+n't) (?:\w+ ){0,2}needs?|not needed|needed no (?:longer|more)|obsolete|out of date|outdated|superfluous|served its purpose)\b/iu
const goes = /^ (?:(?:is|can|may|must|should|to) )*(?:go|away|out|off|gone|void)\b/iu
const stays = /\b(?:stays?|remains?|keep|leave)\b/iu
const asksAbout =
  /^\W*(?:(?:and|so|but|ok|hi|hey|hello) )*(?:how|what|why|who|whose|which|when|where|if|is|are|was|were|do|does|did|has|am)\b|\b(?:may|can|should) (?:i|we|members?|any ?one) /iu
const courtesy =
  /(?:[ ,]+(?:instead|from (?:now|today) on|henceforth|please|pls|thanks|thank you|thx|now|ok|okay|then|:\)))*[?!]*$/iu

/** `last` is the title of the one that was spoken of before. */
export function wantedOf(plain: string, titles: readonly string[], last: string | undefined): Wanted | undefined {
  const told = toldWhole(plain)
  if (told) return saved(told.called, told.text, titles)
  for (const one of spokenOf(plain, titles, last)) {
    const wanted = wantedOfIt(one, titles)
    if (wanted) return wanted
  }
  return undefined
}

const toldAt = (places: readonly Place[], { head, tail }: SpokenOf): string | undefined =>
  places.flatMap(([before, behind]) => (before.test(head) ? (behind.exec(tail)?.[1] ?? []) : []))[0]

function wantedOfIt(spoken: SpokenOf, titles: readonly string[]): Wanted | undefined {
  const { title, called, isAnswer, head, tail } = spoken
  if (title && looks.test(head)) return { deed: 'show', title }
  if (asksAbout.test(`${head}it${tail}`)) return undefined
  const beside = `${head} ${tail}`
  const text = toldAt(texts, spoken)?.replace(courtesy, '')
  // Of what is not stored, none but an answer that is called so is surely meant.
  if (text && !deedsIn(text).includes('remove'))
    return title || isAnswer ? { deed: 'edit', title: title ?? bare(called), text } : undefined
  const newTitle = titleAt(toldAt(titlesToBe, spoken) ?? '')
  if (newTitle !== undefined) return title ? { deed: 'edit', title, newTitle } : undefined
  const [deed] = deedsIn(beside)
  const put = toldAt(
    isQuoted.test(called)
      ? [
          [any, colon],
          [any, plainly],
        ]
      : [[any, colon]],
    spoken,
  )
  const isMade = put !== undefined && !put.includes('?') && !others.has(deed)
  if (isMade && (title || (isAnswer && !kindOnly.test(called)))) return saved(title ?? called, put, titles)
  if (title && puts.has(deed) && here.test(tail)) return { deed: 'move', title }
  const isGone = deed === 'remove' || isIdle.test(beside) || goes.test(tail)
  return title && isGone && !stays.test(beside) ? { deed: 'remove', title } : undefined
}

/** What answer is wanted, and not on what. */
const kindOnly =
  /^\W*(?:(?:a|an|the|my|your|his|her|very|one|word|short|quick|brief|straight|honest|simple|plain|clear|yes|or|no|final|first|last|next|right|correct|wrong|good|best|better|other|another|new|standard|official|only|possible|likely|usual)\b ?)+$/iu
const bare = (called: string): string =>
  called
    .trim()
    .replace(/^(?:the|our|a|an) /iu, '')
    .replace(/^["']|["']$/gu, '')

/** What has that title already is changed. */
function saved(called: string, text: string, titles: readonly string[]): Wanted | undefined {
  const title = titleAt(called)
  if (title === undefined) return undefined
  const stored = titleCalled(title, titles)
  const isSame = stored !== undefined && aboutOf(stored).every(word => stemsOf(title).includes(word))
  return isSame ? { deed: 'edit', title: stored, text } : { deed: 'save', title, text }
}
