// The pictures in the README are those that the replies carry today; `npm run docs` draws them anew.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { phoneHtml, phonePage } from '../../docs/write/phone.ts'
import { pictured, pictures, picturesFolder } from '../../docs/write/pictures.ts'

it('each picture is what its question draws, and stands in the README with that question', async () => {
  const readme = readFileSync('README.md', 'utf8')
  for (const [file, png] of await pictures()) {
    expect(readFileSync(join(picturesFolder, file)).equals(png), `${file}: run npm run docs`).toBe(true)
    expect(readme).toContain(`(${picturesFolder}/${file})`)
    expect(readme).toContain(`\`${pictured[file]}\``)
  }
})

it('what the phone shows is what is answered today', async () => {
  expect(readFileSync(phonePage, 'utf8'), 'run npm run docs:phone').toBe(await phoneHtml())
  expect(readFileSync('README.md', 'utf8')).toContain(`(${phonePage.replace('.html', '.png')})`)
})
