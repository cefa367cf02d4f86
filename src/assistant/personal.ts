// Whose answers are for the asker alone: what is kept about them, what they have learned, when they are to be called.

const personal: ReadonlySet<string> = new Set(['export me', 'lesson answer', 'lesson list', 'remind list'])

/** Where others read along, its answer is given in private. */
export const isPersonal = (command: string): boolean => personal.has(command)
