// Words that are meant as they stand, though they are one slip away from a word of the lists.

import file from './ordinary.json' with { type: 'json' }

export const ordinaryWords: ReadonlySet<string> = new Set(file.words.split(' '))
