// What a process has said so far.

import type { Readable } from 'node:stream'

export interface Spoken {
  output(): string
  complaint(): string
}

export function spokenBy({ stdout, stderr }: { readonly stdout: Readable; readonly stderr: Readable }): Spoken {
  let [output, complaint] = ['', '']
  stdout.on('data', chunk => {
    output += chunk
  })
  stderr.on('data', chunk => {
    complaint += chunk
  })
  return { output: () => output, complaint: () => complaint }
}
