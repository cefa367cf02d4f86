// What is said to people and not of the thing: "pls", "nobody here knows", "my wife asks if", "in plain English". Such
// words find nothing, but each would count against what a question is about.

const nobody = String.raw`(?:nobody|no ?one|no-one|none|not (?:one|a single one|even \w+))(?: else)?`
const somebody = String.raw`(?:${nobody}|everybody|everyone|i|we|they|he|she|(?:my|our|the) \w+(?: \w+)?)`
const among = String.raw`(?: (?:in|at|of|from|on) (?:(?:my|our|the|this) )?\w+(?: \w+)?| here| there| around)?`
const knows = '(?:knows?|knew|understands?|understood|remembers?)'
const cannot = "(?:(?:do(?:es)?|did|can|could) ?(?:n[o'’]?t|not)|can ?['’]?t|cannot|could)"
const tell = '(?:know|understand|remember|say|(?:tell|explain)(?: (?:it|that))?(?: to)?(?: (?:me|us))?)'
const either = '(?: (?:either|it|that|this|for sure|exactly|at all))*'
const then = String.raw`(?=\s*(?:$|[^\p{L}\p{N}\s]))`
const joined = String.raw`(?<!\p{L})(?:(?:and|but|because|cos|as|since|even) )?`
const edge = String.raw`(?<=(?:^|[^\p{L}\p{N}\s'’])\s*)`

const any = (...patterns: readonly string[]) => new RegExp(patterns.map(one => `(?:${one})`).join('|'), 'giu')

/** Each stands for as much as somebody says in one breath. */
const asides: readonly RegExp[] = [
  // Politeness.
  any(
    String.raw`\b(?:please|pls|plz|plse|sorry|excuse me|pardon|kindly|lol|haha+|tbh|btw|by the way|good (?:morning|afternoon|evening|day)|hello|hey)\b(?: (?:a lot|so much|very much|in advance|all|everyone|everybody|there|again)\b)?`,
    String.raw`\b(?:quick|simple|stupid|silly|dumb|daft|basic) question\b`,
  ),
  any(
    String.raw`\b(?:thx|thanks|thank you|cheers)(?: (?:a lot|so much|very much|in advance))?(?=\W*$)`,
    `${edge}(?:sir|madam|mate|guys|folks|hi)${then}`,
  ),
  // Who does not know it, and who asks.
  any(
    String.raw`\b(?:i (?:was|am) |i['’]?m )?(?:just )?(?:wondering|curious)(?: (?:if|whether)\b)?`,
    String.raw`\bi wonder(?: (?:if|whether))?\b`,
    String.raw`\b(?:asking for a friend|i(?:['’]?d| would) like to know|does (?:any|some)(?:one|body) know|any idea)\b`,
    String.raw`\b(?:can|could) (?:you|any(?:one|body)|some(?:one|body)) (?:tell|explain to) (?:me|us)\b`,
    `${joined}${nobody}${among}(?: (?:really|ever|even))? ${knows}${either}${then}`,
    `${joined}${somebody}${among} ${cannot}(?: (?:really|even))? ${tell}${either}${then}`,
    `${joined}${somebody}${among} (?:have|has|had) no (?:idea|clue)${either}${then}`,
    String.raw`${joined}(?:my|our|a|some) \w+(?: \w+)? (?:asks|asked|is asking|was asking|keeps asking|wonders|wondered|wants to know|would like to know)(?: (?:me|us))? (?:(?:if|whether)\b|(?=(?:what|why|how|which|when|where|who)\b))`,
  ),
  // How it is to be told, and that others tell it otherwise.
  any(
    String.raw`\b(?:explain(?: (?:it|this|that))?(?: to (?:me|us|him|her))? )?(?:like|as if) (?:i|we|he|she)(?: am|['’]?m| were| was|['’]?s) \w+(?: years? old)?${then}`,
    String.raw`\bin (?:(?:plain|simple|easy|short|normal|a few|few|two|one) )+(?:words?|english|terms|language|sentences?|lines?|go)\b`,
    String.raw`\b(?:i|we|you) (?:hear|heard|read|found|find|get|got|see) (?:(?:so many|many|lots of|only|two|all sorts of) )?(?:different|conflicting|opposite|contradictory) (?:things|answers|opinions|advice)`,
    String.raw`\b(?:opinions differ|everybody says something (?:else|different))\b`,
  ),
]

const saysSomething = /\p{L}{2}|\d/u

/** The text itself where nothing else is said. */
export function withoutAsides(text: string): string {
  const left = asides.reduce((rest, one) => rest.replace(one, ' '), text)
  return saysSomething.test(left) ? left : text
}
