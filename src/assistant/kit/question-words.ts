// Words that questions are asked with: made of these alone a name would be lost in one.

import words from './question-words.json' with { type: 'json' }

const known: ReadonlySet<string> = new Set(words)

export const isQuestionWord = (word: string): boolean => known.has(word)
