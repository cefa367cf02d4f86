// What a reader gives back: the value, and whatever it had to assume, to be said out loud.

export interface Read<T> {
  readonly value: T
  readonly assumed: readonly string[]
}
