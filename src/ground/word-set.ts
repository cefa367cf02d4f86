/** The words of a list, parted by `between`. */
export const wordSet = (words: string, between = ' '): ReadonlySet<string> => new Set(words.split(between))
