// What is said of how a question of a lesson is answered.

import { type Said, told } from '../../ground/locale.ts'

export const aLetter = told(({ say, own }, first: string, last: string) => say`a letter, ${own(first)} to ${own(last)}`)

export const noChoice: Said = ({ say }) => say`That is none of the choices.`
