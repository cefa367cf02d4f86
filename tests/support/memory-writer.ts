// A process that writes to the memory without pause and says on standard output what was acknowledged; made to be killed.
// Where the database is away, it tries the same write again.
// Arguments: data folder, number of the first write, database URL where there is one.

import { writeSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'
import { faultOfMemory } from '../../src/memory/memory-error.ts'
import { openMemory } from '../../src/memory/opening/open.ts'
import { countingCommunity, questionOf } from './kill-rounds.ts'

const [dataFolder = '', first = '0', databaseUrl] = process.argv.slice(2)
const memory = await openMemory({ dataFolder, databaseUrl })
for (let number = Number(first); ; ) {
  try {
    const id = await memory.questions.keep(questionOf(number))
    await memory.house.change(countingCommunity, [
      { rule: 'maxRate_C', chemistry: 'LiPo', value: number },
      { rule: 'maxRate_C', chemistry: 'LiHV', value: number },
    ])
    await acknowledge(`${number} ${id}\n`)
    number += 1
  } catch (error) {
    if (faultOfMemory(error) !== 'away') throw error
    await pause(10)
  }
}

/** Unbuffered: what the reader sees was acknowledged, and a kill loses no acknowledgement. A full pipe is waited for. */
async function acknowledge(line: string): Promise<void> {
  try {
    writeSync(1, line)
  } catch (error) {
    if ((error as { code?: unknown }).code !== 'EAGAIN') throw error
    await pause(10)
    await acknowledge(line)
  }
}
