// What a sentence wants of a standard answer, told by its structure: what the one on something is to say or to be called,
// that nobody needs it any more, or what whoever asks is to hear.

import { stemsOf } from '../../handbook/search/words.ts'
import { type SpokenOf, spokenOf, titleCalled } from './spoken-of.ts'
import { titleAt } from './title-at.ts'
import { aboutOf } from './titles.ts'
import { type Deed, deedsIn } from './verbs.ts'

export interface Wanted {
  readonly deed: Deed | 'save'
  /** As it is stored, or as it was called where none is. */
  readonly title: string
  readonly newTitle?: string | undefined
  readonly text?: string | undefined
}

const filler =
  /(?:(?:should|could|shall|must|may|might|can|would|is|are|be|to|had|has|needs?|ought|better|rather|henceforth|from|now|on|today|please|pls|just|then|also|instead|it|so|that|let|be) )/u
    .source
const says = new RegExp(String.raw`^\W*${filler}+(?:says?|reads?|states?)(?: that)?\b[ :,]*(.+)$`, 'iu')
const [lets, sayBare] = [
  /\b(?:let|letting|make|making|have|having|could|can|should|shall|must|may)\W*$/iu,
  /^ (?:say|read)(?: that)?\b[ :,]*(.+)$/iu,
]
const rewrites = /\b(?:re(?:word|write|phrase|place)|edit|update|amend|correct|change)\b/iu
const becomes = /^(?:[,:;.-]+| (?:with|by)\b:?| so(?: that)? it (?:says|reads):?)\W*(.+)$/iu
const isWrong =
  /^(?: (?:answer|card|text|is|was|now))* (?:wrong|old|outdated|out of date|not right|no longer right)[,.:;-]+ ?((?:it(?:'?s)?|they|now|new|should|say|write|put)\b.+)$/iu
const colon =
  /^(?: (?:pls|please|new|text|is|be|now|to|should|shall|must|will))*(?:[,.]? (?:new )?text)?: ?(?:now )?(.+)$/iu
const called = new RegExp(
  String.raw`^\W*${filler}*(?:(?:re)?(?:named|titled|called)|known as|headed|go by|(?:nicer|better|clearer|easier) as)(?: to| as)? (.+)$`,
  'iu',
)
const [renames, calls] = [/\b(?:rename|retitle)\W*$/iu, /\b(?:call|name|title|rename|retitle)\W*$/iu]
const [into, arrow] = [/^ (?:to|into|as) (.+)$/iu, /^ ?(?:->|=>) ?(.+)$/u]
const looks = /\bwhat(?:'?s| is| stands)(?: written)? (?:in|on|under)\W*$/iu
/** Nobody has a use for it. */
const isIdle =
  /\b(?:(?:no longer|not|nobody|no one|none of us|\w+n't) (?:\w+ ){0,2}needs?|not needed|needed no (?:longer|more)|obsolete|out of date|outdated|superfluous|served its purpose)\b/iu
const stays = /\b(?:stays?|remains?|keep|leave)\b/iu
const opensAsked =
  /^\W*(?:(?:and|so|but|ok|hi|hey|hello) )*(?:how|what|why|who|whose|which|when|where|is|are|was|were|do|does|did|has|am)\b/iu
const asksLeave = /^\W*if\b|\b(?:may|can|should) (?:i|we|members?|any ?one) /iu

/** Who asks on something is to hear it. */
const fill =
  /(?:(?:it|they|he|she|we|should|would|will|shall|must|may|could|can|is|are|to|be|been|gets?|got|was|were|ought|always|also|now|just|simply|i|want|like|love|wish|be|lovely|nice|good|great|best|if|that|them|the|same|all|have|has) )*/u
    .source
const whoever = new RegExp(
  String.raw`\b(?:every ?(?:one|body)|any ?(?:one|body)|some ?(?:one|body)|who(?:ever)?|members?|people|guests?|newcomers?|they)\b(?: (?:who|that))?(?: (?:ever|next|again))? (?:asks?|asking|wants? to know|wonders?)(?: (?:about|for|after))?,? ((?:wh\w+|how) [^:]+? (?:is|are)|.+?)(?:,? ${fill}(?:hears?|heard|told|gets?|reads?|sees?|learns?|answer|reply|says?)(?: (?:that|to|is|should|be))*:?|:) ([^?]+)$`,
  'iu',
)
const isForAll = /\b(?:hears?|heard|told|same|answer|reply|every\w*|any\w*|whoever|members?)\b/iu
const courtesy =
  /(?:[ ,]+(?:instead|from (?:now|today) on|henceforth|please|pls|thanks|thank you|thx|now|ok|okay|then|:\)))*[?!]*$/iu

export function wantedOf(plain: string, titles: readonly string[], last: string | undefined): Wanted | undefined {
  const told = whoever.exec(plain)
  if (told && !opensAsked.test(plain) && isForAll.test(plain.slice(0, -(told[2] ?? '').length)))
    return saved(told[1] ?? '', told[2] ?? '', titles)
  const all = spokenOf(plain, titles, last)
  for (const one of all) {
    if (one.title && looks.test(one.head)) return { deed: 'show', title: one.title }
    const around = `${one.head}it${one.tail}`
    const wanted = opensAsked.test(around) || asksLeave.test(around) ? undefined : wantedOfIt(one, titles)
    if (wanted) return wanted
  }
  return undefined
}

function wantedOfIt(spoken: SpokenOf, titles: readonly string[]): Wanted | undefined {
  const { title, called: name, isAnswer, head, tail } = spoken
  const text =
    says.exec(tail)?.[1] ??
    (lets.test(head) ? sayBare.exec(tail)?.[1] : undefined) ??
    (rewrites.test(head) ? becomes.exec(tail)?.[1] : undefined) ??
    isWrong.exec(tail)?.[1]
  const words = text?.replace(courtesy, '')
  // Of what is not stored, none but an answer that is called so is surely meant.
  if (words && !deedsIn(words).includes('remove'))
    return title || isAnswer ? { deed: 'edit', title: title ?? bare(name), text: words } : undefined
  const to = called.exec(tail)?.[1] ?? (renames.test(head) ? into.exec(tail)?.[1] : undefined) ?? arrow.exec(tail)?.[1]
  const newTitle = titleAt(to ?? (calls.test(head) ? tail : ''))
  if (newTitle !== undefined) return title ? { deed: 'edit', title, newTitle } : undefined
  const [deed] = deedsIn(`${head} ${tail}`)
  const put = deed && others.has(deed) ? undefined : colon.exec(tail)?.[1]
  if (put && !put.includes('?') && (title || (isAnswer && !kindOnly.test(name))))
    return saved(title ?? name, put, titles)
  if (title && !stays.test(`${head} ${tail}`) && (deed === 'remove' || isIdle.test(`${head} ${tail}`)))
    return { deed: 'remove', title }
  return undefined
}

/** What answer is wanted, and not on what. */
const kindOnly =
  /^\W*(?:(?:a|an|the|my|your|his|her|very|one|word|short|quick|brief|straight|honest|simple|plain|clear|yes|or|no|final|first|last|next|right|correct|wrong|good|best|better|other|another|new|standard|official|only|possible|likely|usual) ?)+$/iu
/** Without what stands before it and around it. */
const bare = (name: string): string =>
  name
    .trim()
    .replace(/^(?:the|our|a|an) /iu, '')
    .replace(/^["']|["']$/gu, '')
const others: ReadonlySet<Deed> = new Set(['remove', 'restore', 'move', 'show'] as const)

/** What has that title already is changed. */
function saved(called: string, text: string, titles: readonly string[]): Wanted | undefined {
  const title = titleAt(called)
  if (title === undefined) return undefined
  const stored = titleCalled(title, titles)
  const isSame = stored !== undefined && aboutOf(stored).every(word => stemsOf(title).includes(word))
  return isSame ? { deed: 'edit', title: stored, text } : { deed: 'save', title, text }
}
