// What the backup and restore scripts share: their argument, where the memory is, and how they end.

import { parseArgs } from 'node:util'
import { MemoryError } from '../memory/memory-error.ts'
import type { MemoryPlace } from '../memory/opening/connect.ts'
import { asMemoryError } from '../memory/opening/unusable.ts'
import { readConfig } from './config.ts'
import { EndingError, endingOf } from './ending.ts'

export function fileArgument(script: string): string {
  const [file, ...more] = parseArgs({ allowPositionals: true }).positionals
  if (file === undefined || more.length > 0) throw new Error(`usage: npm run ${script} -- <file>`)
  return file
}

/** Prints what `work` says of the memory there, or in one line why it failed; then the exit code says of what kind. */
export async function run(work: (place: MemoryPlace) => Promise<string>): Promise<void> {
  try {
    const { CHARGEHAND_DATA: dataFolder, DATABASE_URL: databaseUrl } = readConfig()
    const place = { dataFolder, databaseUrl }
    const said = await work(place).catch(error => Promise.reject(asMemoryError(error, place)))
    process.stdout.write(`${said}\n`)
  } catch (error) {
    const { message } = error as Error
    process.exitCode = endingOf(
      error instanceof EndingError || error instanceof MemoryError ? error : new EndingError(message, 'fault'),
    )
  }
}
