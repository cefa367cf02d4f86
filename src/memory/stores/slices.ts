// Much is deleted a slice at a time, so that nobody waits behind it.

import { setImmediate as nextTurn } from 'node:timers/promises'

const slice = 500

/** `removing` deletes so many at most. */
export async function inSlices(
  removing: (most: number) => { executeTakeFirst(): Promise<{ readonly numDeletedRows: bigint }> },
): Promise<void> {
  for (;;) {
    const { numDeletedRows } = await removing(slice).executeTakeFirst()
    if (numDeletedRows < slice) return
    await nextTurn()
  }
}
