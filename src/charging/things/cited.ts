// Numbers with where they come from, by how firmly they stand.

import type { Cited, Standing } from './chemistry.ts'

const cited =
  (standing: Standing) =>
  <T>(value: T, source: string): Cited<T> => ({ value, standing, source })

export const practice = cited('common practice')
/** Read in the named source. */
export const published = cited('published')
/** Worked out from the named sources. */
export const computed = cited('computed')
/** From memory of the named source. */
export const remembered = cited('memory')
