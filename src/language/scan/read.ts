// What a reader gives back: the value, and whatever it had to assume, to be said out loud.

import type { Said } from '../../ground/locale.ts'

export interface Read<T> {
  readonly value: T
  readonly assumed: readonly Said[]
}
