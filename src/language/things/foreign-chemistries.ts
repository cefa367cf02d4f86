// Chemistries that the trade knows and nobody here charges, and batteries that feed no charger.

const foreign =
  /(?<![\p{L}\d])(?:ni-?mh|ni-?cd|nicads?|alkalines?|zinc[ -](?:air|carbon)|sodium[ -]?ion|na-?ion|lithium[ -](?:metal|primary)|lead[ -]?acid|gel cells?|agm|9 ?v(?:olts?)? (?:block|batter(?:y|ies))|a{2,3} (?:cells?|batter(?:y|ies))|(?:coin|button) cells?|phone(?:'?s)? batter(?:y|ies))(?![\p{L}\d])/giu

/** Where the text names one, outside of the spans that are read as something else, such as a source. */
export const namesForeign = (
  text: string,
  read: readonly { readonly start: number; readonly end: number }[],
): boolean =>
  [...text.matchAll(foreign)].some(
    ({ index, 0: name }) => !read.some(({ start, end }) => index < end && index + name.length > start),
  )
