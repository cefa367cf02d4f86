// Round cells are called by their size.

/** Sizes of round cells, and the most that one holds, in Ah: common practice. */
export const formats: ReadonlyMap<string, number> = new Map([
  ['18650', 3.7],
  ['21700', 6],
  ['26650', 6],
  ['18350', 1.5],
  ['14500', 1.2],
  ['20700', 4.5],
])
