// How a chemistry stands in the key of a figure.

/** `LiIon` of "Li-ion". */
export const inKey = (name: string): string =>
  name.replace(/[^\p{L}\d]+(\p{L}?)/gu, (_, letter: string) => letter.toUpperCase())
