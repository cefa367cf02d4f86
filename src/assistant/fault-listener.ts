// Who is told of what went wrong on our side.

/** Told of every fault that is the program's own; the reference is what the asker was shown, or what was being done. */
export type FaultListener = (fault: unknown, reference: string) => void
