// A standard answer that is told whole: what whoever asks is to hear, and what is to be kept under which words.

const anyone =
  /\b(?:every ?(?:one|body)|any ?(?:one|body)|some ?(?:one|body)|who(?:ever)?|members?|people|guests?|newcomers?|they)\b(?: (?:who|that))?(?: (?:ever|next|again|keeps?|are|is|always|often|still))*/u
const asks =
  /(?:asks?|asking|[ei]nquir(?:es?|ing)|wants? to know|wonders?)(?: (?:me|us|you))?(?: (?:about|for|after))?/u
const joining =
  /(?:(?:it|they|he|she|we|should|would|will|shall|must|may|could|can|is|are|to|be|been|gets?|got|was|were|ought|always|also|now|just|simply|please|pls|i|you|want|like|love|wish|be|lovely|nice|good|great|best|if|that|them|the|same|all|have|has) )*/u
const hears =
  /(?:hears?|heard|told|gets?|receives?|reads?|sees?|learns?|answer|reply|says?|tell (?:them|people|him|her))(?: (?:that|to|is|should|be|this|the|following|answer|reply))*/u
/** "Whoever asks about the gate hears: …". */
const whoever = new RegExp(
  String.raw`${anyone.source} ${asks.source},? ((?:wh\w+|how) [^:.]+? (?:is|are)|.+?)(?:[,.;]? ${joining.source}${hears.source}:?|:) ([^?]+)$`,
  'iu',
)
const isForAll = /\b(?:hears?|heard|told|tell|same|answer|reply|every\w*|any\w*|whoever|members?)\b/iu
const asksItself =
  /^\W*(?:(?:and|so|but|ok|hi|hey|hello) )*(?:how|what|why|who|whose|which|when(?!(?:ever)? (?:some|any|every|people|members|guests|a|one))|where|is|are|was|were|do|does|did|has|am)\b/iu

const kept = [
  // "New answer, bins: tuesdays".
  /\b(?:new|another) (?:\w+ )?(?:answer|reply|faq)[,:.] ?([^:,.]{2,40}): ?(.+)$/iu,
  // "Save "tower" with the words: ask at the desk".
  /\b(?:save|keep|store|add|pin|post|put up) ("[^"]+"|'[^']+') (?:(?:with|as|saying)\b(?: the)?(?: (?:words?|wording|text))?|that (?:says|reads))\W+(.+)$/iu,
  // "Record this under "tower": ask at the desk".
  /\b(?:save|keep|store|record|file|note|put) (?:(?:this|the following|it|what follows) )?(?:under|as) ("[^"]+"|'[^']+'): ?(.+)$/iu,
  // "Save shed code = ask at the desk", of what is no pack and no charger.
  /^\W*(?:(?:please|pls) )*(?:save|keep|store|pin|add|note)[: ]+([^=:,.]{2,40}?) ?(?:=|->|=>) ?((?!.*\b(?:li\w+|packs?|batter\w+|charger|supply|bank)\b)\D+)$/iu,
]

/** "From now on: in the metal tin. Save that.": since when it holds, and what is to be done with it, is none of its words. */
export function wordsIn(text: string): string
export function wordsIn(text: string | undefined): string | undefined
export function wordsIn(text: string | undefined): string | undefined {
  return text?.replace(sinceNow, '').replace(order, '')
}
const sinceNow = /^(?:from (?:now|today) on|henceforth|as of (?:now|today))[,:]? */iu
const order = /(?<=[.!?;]) *(?:please |pls )?(?:save|keep|store|pin|post|add) (?:that|this|it)(?: please| pls)?[.!]*$/iu

export function toldWhole(plain: string) {
  const [, asked, answer = ''] = whoever.exec(plain) ?? []
  const isTold = asked !== undefined && !asksItself.test(plain) && isForAll.test(plain.slice(0, -answer.length))
  if (isTold) return { called: asked, text: wordsIn(answer) }
  const [, called, text = ''] = kept.map(one => one.exec(plain)).find(one => one !== null) ?? []
  return called === undefined ? undefined : { called, text: wordsIn(text) }
}
