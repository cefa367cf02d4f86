// What is said of another word than the one that confirms.

import type { Said } from '../../src/ground/locale.ts'

export const notConfirmed: Said = ({ say }) => say`That is not the word that confirms it.`
