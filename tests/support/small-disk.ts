// A disk that is soon full.

import { spawnSync } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { TestContext } from 'vitest'

/** Only an administrator may mount one; the test is skipped elsewhere, and says so. `size` as of mount: "16k". */
export async function onSmallDisk(
  context: TestContext,
  folder: string,
  size: string,
  test: (disk: string) => Promise<void>,
): Promise<void> {
  const disk = join(folder, 'small')
  mkdirSync(disk)
  const { status } = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', disk])
  if (status !== 0) return context.skip('no small disk can be mounted here')
  try {
    await test(disk)
  } finally {
    spawnSync('umount', [disk])
  }
}
