// What is said where there is nothing to compare.

import type { Said } from '../../src/ground/locale.ts'

export const onlyOne: Said = ({ say }) => say`That is one pack; I need two or more to compare.`
export const twoOrMore: Said = ({ say }) => say`two or more packs with ";" between them`
