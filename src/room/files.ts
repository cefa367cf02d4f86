// Pictures and documents of a reply as files: a terminal shows none, but can say where they are.

import { createHash } from 'node:crypto'
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Reply } from '../assistant/reply.ts'
import { drawPng } from '../charts/drawing/draw.ts'
import { documentAt, pictureAt } from './room.words.ts'

/** Puts them into `folder` and gives a line on each. The same picture has the same name, so it is kept once. */
export async function keepFiles({ charts, documents, locale }: Reply, folder: string): Promise<readonly string[]> {
  if (charts.length + documents.length > 0) await mkdir(folder, { recursive: true })
  const pictures = charts.map(async chart => {
    const picture = await drawPng(chart)
    const name = `${createHash('sha256').update(picture).digest('hex').slice(0, 12)}.png`
    return pictureAt(await keep(name, picture), chart.alternative, locale)
  })
  const texts = documents.map(async ({ name, text }) => documentAt(await keep(name, text), locale))
  return Promise.all([...pictures, ...texts])

  async function keep(name: string, content: Buffer | string): Promise<string> {
    const path = join(folder, name)
    await writeFile(path, content, { mode: 0o600 })
    return path
  }
}
