// What few measured ones say of one that nobody measured.

/**
 * How much further off their mean one more lies than those that make it, by how many they are: the mean leans to its own,
 * and is off itself. One alone says nothing of that.
 */
export const unseen = (measured: number): number => (measured > 1 ? Math.sqrt((measured + 1) / (measured - 1)) : 1)
