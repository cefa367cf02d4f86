// Answers as a phone held upright shows them, in a plain chat column: npm run docs:phone, where a Chromium is installed.

import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { offeredBy } from '../../src/matrix/messages/reactions.ts'
import { renderReply } from '../../src/matrix/messages/render.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { withDemoAssistant } from '../../tests/support/demo-assistant.ts'
import { picturesFolder } from './pictures.ts'

export const phonePage = join(picturesFolder, 'phone.html')
const picture = join(picturesFolder, 'phone.png')
const phone_px = { width: 360, height: 740 }

/** Who asks, and what; one after another, for what a moderator sets holds for whoever asks later. */
const onPhone: readonly (readonly [string, string])[] = [
  ['Ines', 'current for a 4S 1500 LiPo at 3.7V a cell on a 0.3/0.8/1.5/3A charger'],
  ['Ines', 'my pack is puffed, can I charge it'],
  ['Odile, a moderator', 'set our max to 1C'],
]

const style = `body{margin:0;display:flex;font:15px/1.35 'DejaVu Sans',sans-serif;color:#222}
section{width:360px;height:740px;background:#f4f2ee;display:flex;flex-direction:column;outline:1px solid #ccc}
header{background:#3b4a54;color:#fff;padding:12px 14px}
main{flex:1;display:flex;flex-direction:column;justify-content:flex-end;gap:8px;padding:8px;overflow:hidden}
.a,.q{border-radius:10px;padding:7px 10px;max-width:318px}.q{background:#dfe8ee;align-self:flex-end}.a{background:#fff}
small{color:#777}p{margin:0}.r{display:flex;gap:5px}.r span{background:#fff;border:1px solid #ccc;border-radius:10px;padding:1px 7px}
footer{background:#fff;border-top:1px solid #ccc;color:#777;padding:12px 14px}`

/** How far below its header the highest answer begins, told to whoever opens the page. */
const measure =
  'document.title=Math.min(...[...document.querySelectorAll(".a")].map(a=>a.getBoundingClientRect().top-a.parentNode.getBoundingClientRect().top))'

/** The newest message stands at the bottom, as in every chat. */
export async function phoneHtml(): Promise<string> {
  const columns: string[] = []
  await withDemoAssistant(async assistant => {
    for (const [index, [asker, question]] of onPhone.entries()) {
      const reply = await assistant.answer(question, roomOccasion({ conversation: index }))
      const { formatted_body } = renderReply(reply)
      const taps = offeredBy(reply)
        .map(({ sign }) => `<span>${sign} 1</span>`)
        .join('')
      columns.push(`<section><header>Heron Meadow bench</header><main>
<div class="q"><small>${asker}</small><br>${question}</div>
<div class="a"><small>Chargehand</small><br>${formatted_body}</div>
<div class="r">${taps}</div></main><footer>Write a message</footer></section>`)
    }
  })
  return `<!doctype html><meta charset="utf-8"><style>${style}</style>\n${columns.join('\n')}\n<script>${measure}</script>\n`
}

if (import.meta.main) {
  writeFileSync(phonePage, await phoneHtml())
  const size = `--window-size=${onPhone.length * phone_px.width},${phone_px.height}`
  const flags = ['--headless', '--no-sandbox', '--disable-gpu', '--hide-scrollbars', size]
  const dom = execFileSync('chromium', [...flags, '--dump-dom', resolve(phonePage)], {
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  const [, top = 'nothing'] = /<title>([^<]*)/.exec(String(dom)) ?? []
  if (!(Number(top) >= 0)) throw new Error(`the first line of an answer stands at ${top}, out of sight`)
  execFileSync('chromium', [...flags, `--screenshot=${resolve(picture)}`, resolve(phonePage)], { stdio: 'ignore' })
}
