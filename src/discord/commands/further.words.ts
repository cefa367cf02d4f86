// What the window says in which somebody goes on from an answer.

import type { Locale } from '../../ground/locale.ts'

export const furtherWords = ({ say, own }: Locale) => ({
  title: say`Ask more about this answer`,
  label: say`What is different, or what else?`,
  example: own('at 2A · from 3.7V · how long?'),
})
