// What the backup and restore scripts share: their argument, where the memory is, and how they end.

import { parseArgs } from 'node:util'
import type { MemoryPlace } from '../memory/opening/connect.ts'
import type { Config } from './config.ts'

export function fileArgument(script: string): string {
  const [file, ...more] = parseArgs({ allowPositionals: true }).positionals
  if (file === undefined || more.length > 0) throw new Error(`usage: npm run ${script} -- <file>`)
  return file
}

export const placeFrom = ({ CHARGEHAND_DATA, DATABASE_URL }: Config): MemoryPlace => ({
  dataFolder: CHARGEHAND_DATA,
  databaseUrl: DATABASE_URL,
})

/** Prints what `work` says, or in one line why it failed; then the exit code is 1. */
export async function run(work: () => Promise<string>): Promise<void> {
  try {
    process.stdout.write(`${await work()}\n`)
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : error}\n`)
    process.exitCode = 1
  }
}
