// The least that an endpoint for Discord's interactions can do: checks the signature, parses the JSON, replies with the same
// words. Benches compare with it. Arguments: a port, and the public key in hexadecimal digits.

import { verify } from 'node:crypto'
import { createServer } from 'node:http'
import { publicKeyOf } from '../../../src/discord/platform/signature.ts'

const [port = '0', hex = ''] = process.argv.slice(2)
const key = publicKeyOf(hex)
const constant = JSON.stringify({ type: 4, data: { content: '0.5 A' } })

createServer(async (request, response) => {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk)
  const body = Buffer.concat(chunks)
  const signature = Buffer.from(String(request.headers['x-signature-ed25519']), 'hex')
  const timestamp = Buffer.from(String(request.headers['x-signature-timestamp']))
  const isGood = verify(null, Buffer.concat([timestamp, body]), key, signature)
  if (JSON.parse(body.toString()).type !== 2) throw new Error('not a command')
  response.writeHead(isGood ? 200 : 401, { 'content-type': 'application/json' })
  response.end(constant)
}).listen(Number(port), '127.0.0.1', () => process.stderr.write('"ready"\n'))
