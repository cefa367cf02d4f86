// The title that a text begins with, as it would be written.

/** "Our answer on", of which the title is what follows. */
const answerOn =
  /^(?:(?:our|the|a|an|my|new|standard|standing|official|usual|club|fixed|final|pinned) )*(?:answer|reply|card|pin|faq|note|entry|rule)s?\b(?: (?:on|about|for|to|of|regarding))?[ :]*/iu
/** What ends a title: a sign, what is said for politeness, or where its card is to stand. */
const titleEnd =
  /[:;,.?!"]|(?:^| )(?:please|pls|plz|thanks?|thx|ta|cheers|from now on|henceforth|would you|will you|could you|if you|for (?:everyone|everybody|all|us|the club)|so that|because|instead|ok|then|text|(?:up )?(?:in|to|on) (?:this|our|the) (?:room|channel|chat|group|board)|(?:in|up) here)(?= |$|[,.?!])/iu

export function titleAt(text: string): string | undefined {
  const quote = /^ *["']([^"']+)["']/u.exec(text)?.[1]
  const bare = (text.replace(answerOn, '').trim() || text).replace(/^(?:the|a|an) (?=\p{L})/iu, '')
  const title = (quote ?? bare.slice(0, titleEnd.exec(bare)?.index)).trim().replace(/^'|'$/g, '')
  return /[\p{L}\d]/u.test(title) ? title.charAt(0).toUpperCase() + title.slice(1) : undefined
}

/** A text of so many words is its own title; of a longer one so many begin it. */
const [fewWords, firstWords] = [5, 4]
const joining =
  /(?: (?:a|an|the|of|in|on|at|to|for|from|by|with|and|or|but|if|is|are|be|after|before|until|while|when|where|only|not|our|your|its?))+$/iu

/** The first words of a text as its title, where it was given none: "No charging after the last one leaves". */
export function titleOver(text: string | undefined): string | undefined {
  const title = titleAt(text ?? '')
  const words = title?.split(' ') ?? []
  return words.length <= fewWords ? title : words.slice(0, firstWords).join(' ').replace(joining, '')
}
