// A process that writes to the memory without pause and says on standard output what was acknowledged; made to be killed.
// Arguments: data folder, number of the first write, database URL where there is one.

import { writeSync } from 'node:fs'
import { openMemory } from '../../src/memory/opening/open.ts'
import { countingCommunity, questionOf } from './kill-rounds.ts'

const [dataFolder = '', first = '0', databaseUrl] = process.argv.slice(2)
const memory = await openMemory({ dataFolder, databaseUrl })
for (let number = Number(first); ; number++) {
  const id = await memory.questions.keep(questionOf(number))
  await memory.house.change(countingCommunity, [
    { rule: 'maxRate_C', chemistry: 'LiPo', value: number },
    { rule: 'maxRate_C', chemistry: 'LiHV', value: number },
  ])
  // Unbuffered: what the reader sees was acknowledged, and a kill loses no acknowledgement.
  writeSync(1, `${number} ${id}\n`)
}
