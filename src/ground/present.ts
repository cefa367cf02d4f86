// Lists of what may be absent.

/** Those that are there. */
export const present = <T>(items: readonly (T | undefined)[]): T[] => items.filter(one => one !== undefined)
