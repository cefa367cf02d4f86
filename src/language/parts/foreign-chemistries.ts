// Chemistries that the trade knows and nobody here charges, and batteries that feed no charger.

const foreign =
  /(?<![\p{L}\d])(?:ni-?mh|ni-?cd|nicads?|alkalines?|zinc[ -](?:air|carbon)|sodium[ -]?ion|na-?ion|lithium[ -](?:metal|primary)|lead[ -]?acid|gel cells?|agm|9 ?v(?:olts?)? (?:block|batter(?:y|ies))|a{2,3} (?:cells?|batter(?:y|ies))|(?:coin|button) cells?|phone(?:'?s)? batter(?:y|ies))(?![\p{L}\d])/giu

/** "The charger says LiPo, LiFe or NiMH": what it can be set to is no pack. */
const offered =
  /\b(?:charger|charge|menu|display|screen|it)(?: \w+)? (?:says?|has|does|offers?|shows?|lists?|asks?|wants to know|wants|knows)(?: for| me| about| only| both)* (?:(?:li-?po|lihv|life|li-?fe|li-?ion|ni-?mh|ni-?cd|nicad|pb|lead[ -]?acid|agm)(?:[ ,/]+(?:and |or )?)?){2,}/giu

interface Span {
  readonly start: number
  readonly end: number
}

const spansOf = (pattern: RegExp, text: string): readonly Span[] =>
  [...text.matchAll(pattern)].map(({ index, 0: found }) => ({ start: index, end: index + found.length }))

/** Where the text names one, outside of the spans that are read as something else, such as a source. */
export const namesForeign = (text: string, read: readonly Span[]): boolean => {
  const others = [...read, ...spansOf(offered, text)]
  return spansOf(foreign, text).some(one => !others.some(({ start, end }) => one.start < end && one.end > start))
}
