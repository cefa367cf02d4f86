// Writes the whole memory into a file, also while the program runs: npm run backup -- <file>

import { existsSync } from 'node:fs'
import { open, rename } from 'node:fs/promises'
import { backUp } from '../memory/opening/backup.ts'
import { connect, memoryFile } from '../memory/opening/connect.ts'
import { fileArgument, run } from './memory-place.ts'

await run(async place => {
  const file = fileArgument('backup')
  if (!place.databaseUrl && !existsSync(memoryFile(place.dataFolder))) {
    throw new Error(`There is no memory in ${place.dataFolder}.`)
  }
  if (existsSync(file)) throw new Error(`${file} is there already; choose another name.`)
  const db = connect(place)
  const lines = await backUp(db).finally(() => db.destroy())
  await writeWhole(file, `${lines.join('\n')}\n`)
  return `Backed up ${lines.length - 2} rows to ${file}.`
})

/** Under its own name only once all of it is on the disk. */
async function writeWhole(file: string, text: string): Promise<void> {
  const unfinished = `${file}.unfinished`
  const handle = await open(unfinished, 'w', 0o600)
  await handle.writeFile(text)
  await handle.sync()
  await handle.close()
  await rename(unfinished, file)
}
